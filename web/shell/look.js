// Sets the colours before the first paint, so that the page never flashes, and
// whether another worksheet than the one in the markup is going to be opened.
(function () {
  var look = 'day';
  var kept = false;
  try {
    if (localStorage.getItem('ampwright.look') === 'night') look = 'night';
    kept = localStorage.getItem('ampwright.last') !== null;
  } catch (blocked) {
    // Storage is refused here: the day colours do.
  }
  document.documentElement.dataset.look = look;
  if (kept || location.hash.length > 1) document.documentElement.dataset.kept = '';
  if (look === 'night') document.querySelector('meta[name="theme-color"]').content = '#000000';

  // A browser that knows no modules never runs the loader: say so.
  if (!('noModule' in document.createElement('script'))) {
    document.addEventListener('DOMContentLoaded', function () {
      document.getElementById('opening').hidden = true;
      document.getElementById('no-start').hidden = false;
    });
  }
})();
