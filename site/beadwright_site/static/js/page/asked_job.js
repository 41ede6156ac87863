// @ts-check
/* No module, and before anything is drawn: a page printed with an example is dimmed from its first
 * paint where the address asks for a job of its own. The page's script takes the mark over. */
if (location.search) document.documentElement.classList.add("working");
