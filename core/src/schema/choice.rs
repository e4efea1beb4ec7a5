//! Inputs that are one of a few named options.

/// Declares an enum whose variants are options with a key and a label.
macro_rules! choice {
    ($(#[$doc:meta])* $name:ident { $($variant:ident = $key:literal, $label:literal;)+ }) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq)]
        pub enum $name {
            $(#[doc = $label] $variant,)+
        }

        impl $name {
            /// Every option, in the order the form shows them.
            pub const ALL: &'static [$name] = &[$($name::$variant,)+];
            /// Keys and labels, in the same order.
            pub const OPTIONS: &'static [$crate::schema::Choice] = &[
                $($crate::schema::Choice { key: $key, label: $label },)+
            ];
        }

        /// As its key.
        impl serde::Serialize for $name {
            fn serialize<S: serde::Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
                to.serialize_str($name::OPTIONS[*self as usize].key)
            }
        }

        impl $crate::schema::FieldType for $name {
            fn to_value(self) -> $crate::schema::Value {
                $crate::schema::Value::Choice(self as usize)
            }
            fn from_value(value: $crate::schema::Value) -> Self {
                match value {
                    $crate::schema::Value::Choice(at) => Self::ALL.get(at).copied().unwrap_or(Self::ALL[0]),
                    _ => Self::ALL[0],
                }
            }
        }
    };
}
pub(crate) use choice;
