//! Enums whose variants have a name that stays the same from version to version.

/// Declares such an enum with its names; JSON has the name.
macro_rules! codes {
    ($(#[$doc:meta])* $name:ident { $($(#[$about:meta])* $variant:ident = $text:literal,)+ }) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum $name {
            $($(#[$about])* #[doc = ""] #[doc = concat!("JSON has `", $text, "`.")] $variant,)+
        }

        impl $name {
            /// Every one of them, in order.
            pub const ALL: &'static [$name] = &[$($name::$variant,)+];

            /// The name in small letters, as JSON and files have it.
            pub const fn name(self) -> &'static str {
                match self { $($name::$variant => $text,)+ }
            }

            /// The code of that name; none where there is none.
            pub fn named(name: &str) -> Option<$name> {
                $name::ALL.iter().copied().find(|code| code.name() == name)
            }
        }

        impl std::fmt::Display for $name {
            fn fmt(&self, to: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
                to.write_str(self.name())
            }
        }

        impl serde::Serialize for $name {
            fn serialize<S: serde::Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
                to.serialize_str(self.name())
            }
        }
    };
}
pub(crate) use codes;
