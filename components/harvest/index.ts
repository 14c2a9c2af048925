export { SharesDrawing } from "./shares-drawing";
