import { html, useEffect, useRef } from '/assets/preact.js';

/** A dialog above the page; Esc and the button close it, and the focus goes back to where it was. */
export function Dialog({ title, close, children }) {
  const box = useRef(null);
  useEffect(() => {
    const before = document.activeElement;
    const dialog = box.current;
    dialog.showModal();
    return () => {
      dialog.close();
      if (before && before.isConnected) before.focus({ preventScroll: true });
    };
  }, []);
  const cancelled = (event) => {
    event.preventDefault();
    close();
  };
  return html`<dialog ref=${box} aria-labelledby="dialogname" onCancel=${cancelled}>
    <div class="dialoghead"><h2 id="dialogname">${title}</h2><button type="button" onClick=${close}>Close</button></div>
    ${children}</dialog>`;
}
