// Runs before the first paint. The page's own numbers are an example; when the reader's are on their way
// (from a link, or from this device), the example is greyed until they arrive.
try {
  var data = document.documentElement.dataset;
  var link = /=|%3D/i.test(location.hash) || sessionStorage.getItem('throwbook/1/visit') !== null;
  var own = link;
  for (var i = 0; !own && i < localStorage.length; i += 1) {
    own = String(localStorage.key(i)).indexOf('throwbook/1/') === 0;
  }
  // A link's banner needs its room from the start, so that nothing moves when it comes.
  if (own) data.pending = link ? 'link' : '';
  if (localStorage.getItem('throwbook/no-search-key') !== null) data.noSearchKey = '';
  // Whoever was sent numbers came for them, and not to be asked.
  if (link || localStorage.getItem('throwbook/questions') === 'no') data.noQuestions = '';
  // A first question is asked before the figure that answers it: it stays empty until then.
  else if (!own && !location.hash) data.asking = '';
} catch (forbidden) {
  // Storage is forbidden here: the example stands until the page's code says otherwise.
}
