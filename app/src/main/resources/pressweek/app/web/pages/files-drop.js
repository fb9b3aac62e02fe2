import { html, useRef, useState } from '/assets/preact.js';

function entries(reader) {
  return new Promise((done, failed) => reader.readEntries(done, failed));
}

// A folder gives its entries in portions; an empty one is the last.
async function children(folder) {
  const reader = folder.createReader();
  const all = [];
  for (;;) {
    const some = await entries(reader);
    if (some.length === 0) return all;
    all.push(...some);
  }
}

async function within(entry, depth) {
  if (entry.isFile) {
    const file = await new Promise((done, failed) => entry.file(done, failed));
    return [{ file, name: file.name }];
  }
  // A plant's folder is flat; what lies deeper is something else.
  if (depth > 0) return [];
  const lists = await Promise.all((await children(entry)).map((one) => within(one, depth + 1)));
  return lists.flat();
}

async function dropped(transfer) {
  const found = [...transfer.items].map((item) => item.webkitGetAsEntry && item.webkitGetAsEntry()).filter(Boolean);
  if (found.length === 0) return [...transfer.files].map((file) => ({ file, name: file.name }));
  return (await Promise.all(found.map((entry) => within(entry, 0)))).flat();
}

const visible = (files) => files.filter(({ name }) => !name.startsWith('.'));
const chosen = (input) => [...input.files].map((file) => ({ file, name: file.name }));

/** A place to drop a folder or files on, and buttons for those who choose them; `onFiles([{file, name}])`. */
export function Drop({ onFiles }) {
  const [over, setOver] = useState(false);
  const some = useRef(null);
  const folder = useRef(null);
  const give = (files) => visible(files).length > 0 && onFiles(visible(files));
  const drop = async (event) => {
    event.preventDefault();
    setOver(false);
    give(await dropped(event.dataTransfer));
  };
  const take = (event) => {
    give(chosen(event.target));
    event.target.value = '';
  };
  return html`<section class=${over ? 'drop over screen-only' : 'drop screen-only'} aria-label="Bring files in" onDragOver=${(e) => { e.preventDefault(); setOver(true); }}
      onDragLeave=${() => setOver(false)} onDrop=${drop}>
    <p>Drop a folder or files here. They are checked first, and the folder stays as it is until you take them.</p>
    <div class="row"><button type="button" onClick=${() => some.current.click()}>Choose files ...</button>
      <button type="button" onClick=${() => folder.current.click()}>Choose a folder ...</button></div>
    <input ref=${some} type="file" multiple hidden aria-label="Files" onChange=${take} />
    <input ref=${folder} type="file" webkitdirectory hidden aria-label="Folder" onChange=${take} /></section>`;
}
