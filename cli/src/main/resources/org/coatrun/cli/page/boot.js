"use strict";
(async () => {
  const bytes = Uint8Array.from(atob(document.getElementById("code").textContent), (c) => c.charCodeAt(0));
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("gzip"));
  const script = document.createElement("script");
  script.textContent = await new Response(stream).text();
  document.body.append(script);
})();
