/** Whole numbers of 32 bits and floating numbers of 64, as the compiler to WebAssembly names them. */
declare type i32 = number;
declare type f64 = number;
