// Sets the colours before the first paint, so that the page never flashes.
(function () {
  var look = 'day';
  try {
    if (localStorage.getItem('ampwright.look') === 'night') look = 'night';
  } catch (blocked) {
    // Storage is refused here: the day colours do.
  }
  document.documentElement.dataset.look = look;
  if (look === 'night') document.querySelector('meta[name="theme-color"]').content = '#1b1b1b';

  // A browser that knows no modules never runs the loader: say so.
  if (!('noModule' in document.createElement('script'))) {
    document.addEventListener('DOMContentLoaded', function () {
      document.getElementById('opening').hidden = true;
      document.getElementById('no-start').hidden = false;
    });
  }
})();
