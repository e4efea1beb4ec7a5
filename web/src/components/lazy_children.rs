//! Children that are made only when they are wanted.

use std::any::Any;
use std::rc::Rc;

use leptos::children::ToChildren;
use leptos::mount::mount_to;
use leptos::prelude::*;
use leptos::web_sys::HtmlElement;

/// Children that can be mounted in an element, again and again.
///
/// What they are is forgotten, so that a component that takes them is compiled
/// once.
#[derive(Clone)]
pub struct LazyChildren(Rc<dyn Fn(HtmlElement) -> Mounted>);

/// Children on the page, which leave it with this.
pub type Mounted = Box<dyn Any>;

impl LazyChildren {
    /// Makes the children in an element.
    pub fn mount(&self, place: HtmlElement) -> Mounted {
        (self.0)(place)
    }
}

impl<F, C> ToChildren<F> for LazyChildren
where
    F: Fn() -> C + Clone + 'static,
    C: IntoView + 'static,
{
    fn to_children(children: F) -> Self {
        LazyChildren(Rc::new(move |place| {
            Box::new(mount_to(place, children.clone()))
        }))
    }
}
