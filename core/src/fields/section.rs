//! How inputs are declared. `section!` makes a plain struct that the physics
//! reads (`bank.capacity_ah`) together with the table that everything else
//! reads; `sections!` joins the sections into the worksheet's inputs and gives
//! each input its [`Key`](crate::worksheet::Key).

use std::marker::PhantomData;

use super::{Spec, Value};

/// One input of a section: its name, description, and how to reach it.
pub struct Field<S: 'static> {
    /// Name within the section; the key is `section_name`.
    pub name: &'static str,
    /// Its description.
    pub spec: Spec,
    at: u8,
    of: PhantomData<fn(S)>,
}

impl<S: Section> Field<S> {
    /// Describes one; `at` is its place in the section.
    pub(crate) const fn new(name: &'static str, spec: Spec, at: u8) -> Field<S> {
        Field {
            name,
            spec,
            at,
            of: PhantomData,
        }
    }

    /// Reads it.
    pub fn get(&self, section: &S) -> Value {
        section.get(usize::from(self.at))
    }

    /// Sets it to a value that [`Spec::accept`] took.
    pub fn set(&self, section: &mut S, value: Value) {
        section.set(usize::from(self.at), value);
    }
}

/// A group of inputs.
pub trait Section: Default + 'static {
    /// Its inputs, in the order the form shows them.
    const FIELDS: &'static [Field<Self>];

    /// The input at a place of [`Section::FIELDS`]; absent beyond its end.
    fn get(&self, at: usize) -> Value;

    /// Sets it to a value that [`Spec::accept`] took.
    fn set(&mut self, at: usize, value: Value);
}

macro_rules! section {
    ($(#[$doc:meta])* $name:ident { $($field:ident: $type:ty = $spec:expr;)+ }) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq)]
        pub struct $name {
            $(
                #[doc = concat!("Input `", stringify!($field), "`; see [`Section::FIELDS`](crate::fields::Section::FIELDS).")]
                pub $field: $type,
            )+
        }

        const _: () = {
            // A static, so that the table stands once in the program.
            static TABLE: &[$crate::fields::Field<$name>] = &[$(
                $crate::fields::Field::new(stringify!($field), $spec, Ordinal::$field as u8),
            )+];

            /// The places, by name: matched rather than pointed to, which is
            /// half the size of a function each.
            #[allow(non_camel_case_types)]
            enum Ordinal { $($field,)+ }
            struct At;
            #[allow(non_upper_case_globals)]
            impl At { $(const $field: usize = Ordinal::$field as usize;)+ }

            /// Each input's place in its section, for a [`Key`](crate::worksheet::Key).
            #[allow(non_upper_case_globals, dead_code)]
            impl $name { $(pub(crate) const $field: u8 = Ordinal::$field as u8;)+ }

            impl $crate::fields::Section for $name {
                const FIELDS: &'static [$crate::fields::Field<Self>] = TABLE;

                fn get(&self, at: usize) -> $crate::fields::Value {
                    match at {
                        $(At::$field => $crate::fields::Held::to_value(self.$field),)+
                        _ => $crate::fields::Value::Absent,
                    }
                }

                fn set(&mut self, at: usize, value: $crate::fields::Value) {
                    match at {
                        $(At::$field => self.$field = $crate::fields::Held::from_value(value),)+
                        _ => {}
                    }
                }
            }
        };

        impl Default for $name {
            fn default() -> Self {
                $(
                    let $field: $type = $crate::fields::Held::from_value({
                        const SPEC: $crate::fields::Spec = $spec;
                        SPEC.default()
                    });
                )+
                Self { $($field,)+ }
            }
        }
    };
}
pub(crate) use section;

macro_rules! sections {
    ($(#[$doc:meta])* $name:ident { $($section:ident: $type:ty, $title:literal, $about:literal;)+ }) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, Default)]
        pub struct $name {
            $(#[doc = $title] pub $section: $type,)+
        }

        /// Names a section of the worksheet.
        #[allow(non_camel_case_types)]
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum SectionId {
            $(#[doc = $title] $section,)+
        }

        impl SectionId {
            /// Every section, in the order the worksheet shows them.
            pub const ALL: &'static [SectionId] = &[$(SectionId::$section,)+];

            /// First part of its inputs' keys.
            pub const fn prefix(self) -> &'static str {
                match self { $(SectionId::$section => stringify!($section),)+ }
            }
            /// Its heading.
            pub const fn title(self) -> &'static str {
                match self { $(SectionId::$section => $title,)+ }
            }
            /// One line beneath the heading.
            pub const fn about(self) -> &'static str {
                match self { $(SectionId::$section => $about,)+ }
            }
            fn count(self) -> usize {
                match self { $(SectionId::$section => <$type as $crate::fields::Section>::FIELDS.len(),)+ }
            }
        }

        impl Key {
            /// The input's description.
            pub fn spec(self) -> &'static $crate::fields::Spec {
                match self.section {
                    $(SectionId::$section => &<$type as $crate::fields::Section>::FIELDS[usize::from(self.field)].spec,)+
                }
            }
            /// The signs expected of the main answers when it rises; none for a
            /// number nobody has written them for.
            pub fn effect(self) -> Option<$crate::fields::Effect> {
                match self.section {
                    $(SectionId::$section => <$type as $crate::fields::Effects>::effect(self.short()),)+
                }
            }
            /// Its name within the section.
            fn short(self) -> &'static str {
                match self.section {
                    $(SectionId::$section => <$type as $crate::fields::Section>::FIELDS[usize::from(self.field)].name,)+
                }
            }
        }

        impl $name {
            /// Reads an input.
            pub fn get(&self, key: Key) -> $crate::fields::Value {
                match key.section {
                    $(SectionId::$section => $crate::fields::Section::get(&self.$section, usize::from(key.field)),)+
                }
            }
            fn put(&mut self, key: Key, value: $crate::fields::Value) {
                match key.section {
                    $(SectionId::$section => $crate::fields::Section::set(&mut self.$section, usize::from(key.field), value),)+
                }
            }
        }
    };
}
pub(crate) use sections;
