import { layoutOf } from "../../../_session/of-record";

export default layoutOf("/field/came-home/[record]");
