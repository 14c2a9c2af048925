// Holds a folder as a server does, says so, and waits to be killed.
import { holdFolder } from "@/lib/db";

holdFolder(process.argv[2] as string);
console.log("held");
setInterval(() => {}, 60_000);
