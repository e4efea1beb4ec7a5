// Until all of the page has started, marks every entry that is touched, so that
// what is typed into the printed page is not lost; see web/src/browser/early.rs.
(function () {
  const mark = ({ target }) => {
    if (document.documentElement.dataset.complete === undefined) target.dataset.early = '';
  };
  addEventListener('input', mark, true);
  addEventListener('change', mark, true);
})();
