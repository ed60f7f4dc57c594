// Where the class's file is kept on this device: one record in the browser's own database, written in one
// transaction, so that after a crash it is either the old one or the new one.
const NAME = "namewright", STORE = "kept";

function opened() {
  return new Promise((done, fail) => {
    const asked = indexedDB.open(NAME, 1);
    asked.onupgradeneeded = () => asked.result.createObjectStore(STORE);
    asked.onsuccess = () => done(asked.result);
    asked.onerror = () => fail(asked.error);
    asked.onblocked = () => fail(new Error("blocked"));
  });
}

async function within(mode, work) {
  const database = await opened();
  try {
    return await new Promise((done, fail) => {
      const transaction = database.transaction(STORE, mode, { durability: "strict" });
      const asked = work(transaction.objectStore(STORE));
      transaction.oncomplete = () => done(asked.result);
      transaction.onabort = transaction.onerror = () => fail(transaction.error);
    });
  } finally {
    database.close();
  }
}

export const get = (key) => within("readonly", (store) => store.get(key));
export const put = (key, value) => within("readwrite", (store) => store.put(value, key));
