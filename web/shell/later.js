
// Fetches the second part of the program and joins it to the first, whose script
// the build puts this into. What asked for it is called back either way.
async function __wasm_split_load_later(calledBack, asker) {
    const first = initSync();
    let hasCome = false;
    try {
        const { rest } = document.querySelector('script[data-rest]').dataset;
        const answer = await fetch(new URL(rest, document.baseURI));
        if (!answer.ok) throw new Error(`${rest}: ${answer.status}`);
        await WebAssembly.instantiate(await answer.arrayBuffer(), { __wasm_split: first });
        hasCome = true;
    } catch (reason) {
        console.error(reason);
    }
    first.__indirect_function_table.get(calledBack)(asker, hasCome);
}
