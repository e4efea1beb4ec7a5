// Finds what stands on the page by role and name, as a screen reader tells
// them. Called with a role, a name or null for all, and an element to look in
// or null for the page. `names_are_those_a_screen_reader_says` in the browser
// tests holds roles and names against the browser's own.
const [role, wanted, within] = arguments;

// What has a role: by its tag, or because it says so.
const TAGS = {
    button: 'button, input[type=button], input[type=submit], input[type=file]',
    checkbox: 'input[type=checkbox]',
    combobox: 'select:not([multiple])',
    group: 'fieldset, details',
    heading: 'h1, h2, h3, h4, h5, h6',
    link: 'a[href]',
    navigation: 'nav',
    radio: 'input[type=radio]',
    region: 'section',
    slider: 'input[type=range]',
    table: 'table',
    textbox: 'textarea, input:not([type]), input[type=text], input[type=url], input[type=search]',
    // No role of its own: what opens and closes a fold.
    fold: 'summary',
};
// These are named by what they hold, unless they say otherwise.
const NAMED_BY_CONTENT = ['button', 'heading', 'link', 'fold'];

const plain = (text) => text.replace(/[\s\u00a0]+/g, ' ').trim();
const hidden = (element) => element.ariaHidden === 'true' || !element.checkVisibility({ visibilityProperty: true });

/** What is read out of an element and all it holds. */
function content(node) {
    if (node.nodeType === Node.TEXT_NODE) return node.data;
    if (node.nodeType !== Node.ELEMENT_NODE || hidden(node)) return '';
    if (node.ariaLabel) return node.ariaLabel;
    if (node.localName === 'img') return node.alt;
    if (['input', 'select', 'textarea'].includes(node.localName)) return '';
    const text = [...node.childNodes].map(content).join('');
    return getComputedStyle(node).display === 'inline' ? text : ` ${text} `;
}

/** What an element is called. */
function name(element) {
    const by = element.getAttribute('aria-labelledby');
    if (by) {
        const parts = by.split(/\s+/).map((id) => document.getElementById(id));
        return plain(parts.map((part) => (part ? content(part) || part.textContent : '')).join(' '));
    }
    if (element.ariaLabel) return plain(element.ariaLabel);
    const labels = [...(element.labels ?? [])].map(content).join(' ');
    if (labels) return plain(labels);
    const title = { fieldset: ':scope > legend', table: ':scope > caption' }[element.localName];
    const titled = title && element.querySelector(title);
    if (titled) return plain(content(titled));
    const inner = NAMED_BY_CONTENT.includes(role) ? plain(content(element)) : '';
    return inner || plain(element.title || element.placeholder || '');
}

const fits = (name) =>
    wanted === null || (wanted.endsWith('…') ? name.startsWith(wanted.slice(0, -1)) : name === wanted);

const own = `[role=${role}]`;
return [...(within ?? document).querySelectorAll(`${TAGS[role]}, ${own}`)]
    .filter((element) => (!element.role || element.matches(own)) && !hidden(element) && !element.closest('[aria-hidden=true]'))
    .map((element) => [element, name(element)])
    // A section without a name is no region.
    .filter(([, name]) => (role !== 'region' || name !== '') && fits(name));
