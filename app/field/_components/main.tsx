import "./document.css";
import "../_screens/controls.module.css";
import "../_screens/screens.module.css";
import "@/components/scanner/scanner.module.css";
import { createRoot } from "react-dom/client";
import { FieldApp } from "./field-app";
import { showGround } from "./field-head";

showGround();
const stands = document.getElementById("field");
if (stands) createRoot(stands).render(<FieldApp />);
