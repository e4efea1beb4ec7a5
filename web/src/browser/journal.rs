//! A journal of what is kept. The browser writes its storage to disk seconds
//! late, and one that is killed would lose them; its database is written at
//! once.

use js_sys::{Array, Object, Promise, Reflect};
use leptos::prelude::window;
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{IdbDatabase, IdbObjectStore, IdbRequest, IdbTransactionMode};

/// What the database and its only table are called.
const DATABASE: &str = "ampwright";
const TABLE: &str = "kept";

/// The database, open.
#[derive(Clone)]
pub struct Journal(IdbDatabase);

/// The last text of one boat.
#[derive(Debug, Clone, PartialEq)]
pub struct Entry {
    /// The number under which the boat is kept.
    pub number: u32,
    /// How many texts had been kept before: of two, the higher is the newer.
    pub count: f64,
    /// The boat as a text.
    pub text: String,
}

impl Journal {
    /// Opens the database, or makes it.
    ///
    /// # Errors
    /// What the browser says where it has none for this page.
    pub async fn open() -> Result<Journal, JsValue> {
        let factory = window().indexed_db()?.ok_or(JsValue::UNDEFINED)?;
        let asked = factory.open_with_u32(DATABASE, 1)?;
        let request = asked.clone();
        let make = Closure::once_into_js(move || {
            let made = request.result().map(JsCast::unchecked_into::<IdbDatabase>);
            let _ = made.and_then(|database| database.create_object_store(TABLE));
        });
        asked.set_onupgradeneeded(Some(make.unchecked_ref()));
        let database = outcome(&asked).await?;
        Ok(Journal(database.unchecked_into()))
    }

    /// Everything in it.
    ///
    /// # Errors
    /// What the browser says if it cannot read it.
    pub async fn entries(&self) -> Result<Vec<Entry>, JsValue> {
        let table = self.table(IdbTransactionMode::Readonly)?;
        let (keys, values) = (table.get_all_keys()?, table.get_all()?);
        let keys = Array::from(&outcome(&keys).await?);
        let values = Array::from(&outcome(&values).await?);
        let entries = keys.iter().zip(values.iter());
        Ok(entries
            .filter_map(|(key, value)| entry(&key, &value))
            .collect())
    }

    /// Writes a boat's last text; it is under way to the disk afterwards.
    ///
    /// # Errors
    /// What the browser says if it takes nothing.
    pub fn write(&self, entry: &Entry) -> Result<(), JsValue> {
        let value = Object::new();
        Reflect::set(&value, &"count".into(), &entry.count.into())?;
        Reflect::set(&value, &"text".into(), &entry.text.as_str().into())?;
        let table = self.table(IdbTransactionMode::Readwrite)?;
        table.put_with_key(&value, &key(entry.number))?;
        Ok(())
    }

    /// Forgets a boat.
    ///
    /// # Errors
    /// What the browser says if it does not.
    pub fn remove(&self, number: u32) -> Result<(), JsValue> {
        let table = self.table(IdbTransactionMode::Readwrite)?;
        table.delete(&key(number))?;
        Ok(())
    }

    fn table(&self, mode: IdbTransactionMode) -> Result<IdbObjectStore, JsValue> {
        let transaction = self.0.transaction_with_str_and_mode(TABLE, mode)?;
        transaction.object_store(TABLE)
    }
}

/// Boats are named by their number as a text.
fn key(number: u32) -> JsValue {
    number.to_string().into()
}

/// An entry as it stands in the table; what is not ours is passed over.
fn entry(key: &JsValue, value: &JsValue) -> Option<Entry> {
    let part = |name: &str| Reflect::get(value, &name.into()).ok();
    Some(Entry {
        number: key.as_string()?.parse().ok()?,
        count: part("count")?.as_f64()?,
        text: part("text")?.as_string()?,
    })
}

/// What a request comes to.
async fn outcome(request: &IdbRequest) -> Result<JsValue, JsValue> {
    let heard = Promise::new(&mut |done, failed| {
        request.set_onsuccess(Some(&done));
        request.set_onerror(Some(&failed));
    });
    JsFuture::from(heard).await?;
    request.result()
}
