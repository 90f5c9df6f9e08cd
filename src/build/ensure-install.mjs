// The door every npm script goes through. It must load on any Node that knows modules, so this file only looks at the
// version; the work is in install.mjs. Written for old engines: no top-level await, no node: scheme, no new syntax.
var parts = process.versions.node.split('.').map(Number);

if (parts[0] < 20 || (parts[0] === 20 && parts[1] < 19)) {
  console.error('Barwright needs Node 20.19 or later to begin with; this is ' + process.versions.node + '.');
  process.exit(1);
} else {
  import('./install.mjs')
    .then(function (module) {
      module.ensureInstall();
    })
    .catch(function (error) {
      console.error(error.message);
      process.exit(1);
    });
}
