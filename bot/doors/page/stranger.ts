/** What a browser sees that has not opened the printed address yet: one sentence that says where to find it. */
export function strangerPage(port: number, triedAKey: boolean): string {
  const old = triedAKey ? '<p>The key in this address is not the one of this start; each start of Pawl makes a new one.</p>' : '';
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Pawl: this browser is not known yet</title>
<link rel="icon" href="/mark.svg" type="image/svg+xml">
<link rel="stylesheet" href="/page.css">
</head>
<body class="stranger">
<main>
<div class="sign"><img src="/mark.svg" alt="" width="34" height="34"><h1>Pawl</h1></div>
${old}<p>Open the address that Pawl printed where you started it: in that window, look for the line with <code>http://127.0.0.1:${port}/?key=…</code></p>
<p>This browser is then remembered, and the plain address or a bookmark will do.</p>
</main>
</body>
</html>
`;
}
