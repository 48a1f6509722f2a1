// Runs before the first paint of a part that stands in a frame of another site. It keeps nothing and finds nothing kept:
// what is tried in a page of others must not change a job of this site, nor show its numbers there. So each use of the
// storage is refused, as in a frame that has none.
['localStorage', 'sessionStorage'].forEach(function (name) {
  Object.defineProperty(window, name, {
    get: function () {
      throw new DOMException('A part in a frame keeps nothing.', 'SecurityError');
    },
  });
});
// The example is greyed until the numbers of the address are there.
if (/=|%3D/i.test(location.hash)) document.documentElement.dataset.pending = 'link';
