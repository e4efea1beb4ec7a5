//! How inputs are declared. `section!` makes a plain struct that the physics
//! reads (`bank.capacity_ah`) together with the table that everything else
//! reads; `sections!` joins the sections into the worksheet's inputs and gives
//! each input its [`Key`](crate::boat::Key).

use crate::boat::{Condition, EmptyMeans, Input};
use crate::schema::{FieldSpec, Value};

/// One input of a section: its name, description, and how to reach it.
pub struct Field<S: 'static> {
    /// Name within the section; the key is `section_name`.
    pub name: &'static str,
    /// Its description.
    pub spec: FieldSpec,
    /// When it matters.
    pub applies: Condition,
    /// What is used where it is left empty.
    pub empty_means: EmptyMeans,
    get: fn(&S) -> Value,
    set: fn(&mut S, Value),
}

impl<S: Section> Field<S> {
    /// Describes one.
    pub(crate) const fn new(
        name: &'static str,
        input: Input,
        get: fn(&S) -> Value,
        set: fn(&mut S, Value),
    ) -> Field<S> {
        Field {
            name,
            spec: input.spec,
            applies: input.applies,
            empty_means: input.empty_means,
            get,
            set,
        }
    }

    /// Reads it.
    pub fn get(&self, section: &S) -> Value {
        (self.get)(section)
    }

    /// Sets it to a value that [`FieldSpec::accept`] took.
    pub fn set(&self, section: &mut S, value: Value) {
        (self.set)(section, value);
    }
}

/// A group of inputs.
pub trait Section: Default + 'static {
    /// Its inputs, in the order the form shows them.
    const FIELDS: &'static [Field<Self>];
}

macro_rules! section {
    ($(#[$doc:meta])* $name:ident { $($field:ident: $type:ty = $input:expr;)+ }) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq)]
        pub struct $name {
            $(
                #[doc = concat!("Input `", stringify!($field), "`; see [`Section::FIELDS`](crate::boat::Section::FIELDS).")]
                pub $field: $type,
            )+
        }

        impl $crate::boat::Section for $name {
            const FIELDS: &'static [$crate::boat::Field<Self>] = &[$(
                $crate::boat::Field::new(
                    stringify!($field),
                    $input,
                    |section| $crate::schema::FieldType::to_value(section.$field),
                    |section, value| section.$field = $crate::schema::FieldType::from_value(value),
                ),
            )+];
        }

        const _: () = {
            #[allow(non_camel_case_types)]
            enum Ordinal { $($field,)+ }

            #[allow(non_upper_case_globals)]
            impl $name {
                $(
                    #[doc = concat!("Place of the input `", stringify!($field), "` in its section; see [`key!`](crate::key).")]
                    pub const $field: u8 = Ordinal::$field as u8;
                )+
            }
        };

        impl Default for $name {
            fn default() -> Self {
                $(
                    // In the program stands the value alone, not all about it again.
                    let $field: $type =
                        $crate::schema::FieldType::from_value(const { $input.spec.default() });
                )+
                Self { $($field,)+ }
            }
        }
    };
}
pub(crate) use section;

/// Names an input by its section and its field: `key!(alt.rated_a)` is the
/// [`Key`](crate::boat::Key) of the input `alt_rated_a`. A name that no input has
/// does not compile.
#[macro_export]
macro_rules! key {
    ($section:ident . $field:ident) => {
        $crate::boat::Key::at(
            $crate::boat::SectionId::$section,
            $crate::boat::section_types::$section::$field,
        )
    };
}

macro_rules! sections {
    ($(#[$doc:meta])* $name:ident { $($section:ident: $type:ty, $title:literal, $about:literal;)+ }) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, Default)]
        pub struct $name {
            $(#[doc = $title] pub $section: $type,)+
        }

        /// What each section of the worksheet is made of, under the section's name.
        #[allow(non_camel_case_types)]
        pub mod section_types {
            use super::*;
            $(#[doc = $title] pub type $section = $type;)+
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
                match self { $(SectionId::$section => <$type as $crate::boat::Section>::FIELDS.len(),)+ }
            }
        }

        impl Key {
            /// The input's description.
            pub fn spec(self) -> &'static $crate::schema::FieldSpec {
                match self.section {
                    $(SectionId::$section => &<$type as $crate::boat::Section>::FIELDS[usize::from(self.field)].spec,)+
                }
            }
            /// When it matters.
            fn condition(self) -> $crate::boat::Condition {
                match self.section {
                    $(SectionId::$section => <$type as $crate::boat::Section>::FIELDS[usize::from(self.field)].applies,)+
                }
            }
            /// What is used where it is left empty.
            fn empty_means(self) -> $crate::boat::EmptyMeans {
                match self.section {
                    $(SectionId::$section => <$type as $crate::boat::Section>::FIELDS[usize::from(self.field)].empty_means,)+
                }
            }
            /// The signs expected of the main answers when it rises; none for a
            /// number nobody has written them for.
            pub fn effect(self) -> Option<$crate::schema::Effect> {
                match self.section {
                    $(SectionId::$section => <$type as $crate::schema::Effects>::effect(self.short()),)+
                }
            }
            /// Its name within the section.
            pub(crate) fn short(self) -> &'static str {
                match self.section {
                    $(SectionId::$section => <$type as $crate::boat::Section>::FIELDS[usize::from(self.field)].name,)+
                }
            }
        }

        impl $name {
            /// Reads an input.
            pub fn get(&self, key: Key) -> $crate::schema::Value {
                match key.section {
                    $(SectionId::$section => <$type as $crate::boat::Section>::FIELDS[usize::from(key.field)].get(&self.$section),)+
                }
            }
            pub(crate) fn put(&mut self, key: Key, value: $crate::schema::Value) {
                match key.section {
                    $(SectionId::$section => <$type as $crate::boat::Section>::FIELDS[usize::from(key.field)].set(&mut self.$section, value),)+
                }
            }
        }
    };
}
pub(crate) use sections;
