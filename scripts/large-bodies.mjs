// Bodies that are sent are held in memory until it is known who sends them. So only a few large ones may come in at the same time.
const large = 1024 * 1024;
const most = 4;

/** Looks at each request before it is answered: false where its large body has to wait for others, which has then been said. */
export function largeBodies() {
  let coming = 0;
  return (request, response) => {
    if (request.method === "GET" || request.method === "HEAD") return true;
    const length = request.headers["content-length"];
    if (length === undefined ? !request.headers["transfer-encoding"] : Number(length) <= large) return true;
    if (coming >= most) {
      response.writeHead(503, {
        "content-type": "text/plain; charset=utf-8",
        "retry-after": "20",
        connection: "close",
      });
      response.end("Other files are just coming in. Wait a moment, then send this again.\n");
      return false;
    }
    coming += 1;
    response.once("close", () => {
      coming -= 1;
    });
    return true;
  };
}
