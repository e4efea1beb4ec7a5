//! Coefficients of the six-stage Rosenbrock method RODAS, see `ode.rs`:
//! E. Hairer, G. Wanner, "Solving Ordinary Differential Equations II", 2nd ed.,
//! 1996, section IV.7; from memory, their order is checked by a test there.

pub(super) const STAGES: usize = 6;
/// The diagonal of the method.
pub(super) const GAMMA: f64 = 0.25;
/// Times of the stages.
pub(super) const ALPHA: [f64; STAGES] = [0.0, 0.386, 0.21, 0.63, 1.0, 1.0];
/// Weights of the rate's own change with time.
pub(super) const TIME: [f64; STAGES] = [0.25, -0.1043, 0.1035, -0.0362, 0.0, 0.0];
/// How earlier stages place a stage; the last row plus one makes the step.
pub(super) const A: [[f64; STAGES - 1]; STAGES] = [
    [0.0; 5],
    [1.544, 0.0, 0.0, 0.0, 0.0],
    [
        0.946_678_528_081_582_6,
        0.255_701_169_898_328_4,
        0.0,
        0.0,
        0.0,
    ],
    [
        3.314_825_187_068_521,
        2.896_124_015_972_201,
        0.998_641_913_997_781_7,
        0.0,
        0.0,
    ],
    [
        1.221_224_509_226_641,
        6.019_134_481_288_629,
        12.537_083_332_932_087,
        -0.687_886_036_105_895,
        0.0,
    ],
    [
        1.221_224_509_226_641,
        6.019_134_481_288_629,
        12.537_083_332_932_087,
        -0.687_886_036_105_895,
        1.0,
    ],
];
/// How earlier stages enter a stage's equation, over the step.
pub(super) const C: [[f64; STAGES - 1]; STAGES] = [
    [0.0; 5],
    [-5.6688, 0.0, 0.0, 0.0, 0.0],
    [
        -2.430_093_356_833_875,
        -0.206_359_915_709_191_5,
        0.0,
        0.0,
        0.0,
    ],
    [
        -0.107_352_905_815_137_5,
        -9.594_562_251_023_355,
        -20.470_286_148_096_16,
        0.0,
        0.0,
    ],
    [
        7.496_443_313_967_647,
        -10.246_804_314_643_52,
        -33.999_903_528_199_05,
        11.708_908_932_061_6,
        0.0,
    ],
    [
        8.083_246_795_921_522,
        -7.981_132_988_064_893,
        -31.521_594_328_743_71,
        16.319_305_431_231_36,
        -6.058_818_238_834_054,
    ],
];
