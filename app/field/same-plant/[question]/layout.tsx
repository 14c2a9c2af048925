import { layoutOf } from "../../../_session/of-record";

export default layoutOf("/field/same-plant/[question]");
