import { layoutOf } from "../../_session/of-record";

export default layoutOf("/stewards/[id]");
