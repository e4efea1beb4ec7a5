use ampwright_core::*;
fn main(){ let s=worksheet::demo(); let r=report(&s); for w in working::workings(&s,&r){ println!("{}", w.id); print!("{}",w.text()); } for w in working::workings_at(&s,&r,20.0){ println!("{}", w.id); print!("{}",w.text()); } }
