"""The Heat page worked by hand."""

from tests.calc.worked_pages import Worked

CERTIFICATE = "c=.18&mn=1.3&si=.25&cr=.05&mo=.01&ni=.08&cu=.2&v=.03"
JOB = "plate=1in&plate2=3/8in&leg=3/8in&heat=40kJ/in"

HEAT = (
    Worked(
        "heat",
        f"{JOB}&steel=A572-50&{CERTIFICATE}&preheat_code=en-b",
        {
            "melt": "certificate",
            "carbon_equivalents.ce.value": 0.433333,
            "carbon_equivalents.cet.value": 0.3255,
            "carbon_equivalents.pcm.value": 0.270833,
            "hydrogen.value": 5.0,
            "thickness.value": 1.0,
            "combined_thickness.value": 2.375,
            "preheat.by": "method-b",
            "preheat.code": "en-b",
            "preheat.code_chosen": True,
            "preheat.needed": True,
            "preheat.value": 200.0,
            "preheat.table.value": 50.0,
            "preheat.table.category": "B",
            "preheat.method_b.value": 191.23,
            "preheat.method_b_worst": None,
            "welded_at.value": 200.0,
            "welded_at.by_hand": False,
            "heat.value": 40.0,
            "heat_en.value": 32.0,
            "cooling.regime": "thick",
            "cooling.value": 5.4926,
            "hardness.value": 397.56,
            "hardness.low": 217.99,
            "hardness.high": 453.56,
        },
        """CE (IIW) .18 + 1.3/6 + (.05 + .01 + .03)/5 + (.08 + .2)/15 = .43333. CET .18 + (1.3 +
        .01)/10 + (.05 + .2)/20 + .08/40 = .3255. Pcm .18 + .25/30 + (1.3 + .2 + .05)/20 + .08/60 +
        .01/15 + .03/10 = .27083. EN 1011-1: 0.8 x 40 = 32 kJ/in = 1.25984 kJ/mm. EN 1011-2 method
        B by the thicker plate: 697 x .3255 = 226.87; 160 tanh(25.4/35) = 99.26; 62 x 5^0.35 =
        108.90; (53 x .3255 - 32) x 1.25984 = -18.58; less 328: 88.46 C = 191.2 F, up to tens 200 F
        (by the thinner plate it would be 31.7 C). AWS D1.1 category B, over 3/4 in: 50 F. Combined
        thickness of a tee: 1 + 1 + 3/8. Cooling from 93.33 C, thick plate, fillet factor 0.67:
        (6700 - 466.7) x 1.25984 x (1/406.67 - 1/706.67) x 0.67 = 5.493 s. Hardness by Lorenz and
        Duren: CB .18 + .25/11 + 1.3/8 + .2/9 + .05/5 + .08/17 + .01/6 + .03/3 = .41382; log 5.493 =
        .7398; 2019 (.18 x .6301 + .3 x .23382) + 66 x .4082 = 397.6 HV, between 350 CB + 101 and
        802 C + 305, and twice the scatter of 28 HV up. Down from the slowest cooling, the thinner
        plate as thin, F2 0.67: (4300 - 401.3) 1e5 (1.25984/9.525)^2 (1/406.67^2 - 1/706.67^2) 0.67
        = 18.48 s; log 1.2667; 2019 (.18 x .36664 + .3 x .23382) - 66 x .01338 = 274.0, less 56.""",
        share=2e-4,
    ),
    Worked(
        "heat",
        f"{JOB}&steel=A572-50&{CERTIFICATE}&preheat=300F&preheat_code=en-b",
        {"welded_at.value": 300.0, "welded_at.by_hand": True, "preheat.value": 200.0},
        "By hand it is welded at 300 F; what is asked stays.",
    ),
    Worked(
        "heat",
        f"{JOB}&steel=A572-50&{CERTIFICATE}",
        {
            "preheat.by": "table",
            "preheat.code": "d1.1",
            "preheat.code_chosen": False,
            "preheat.value": 50.0,
            "preheat.needed": False,
            "preheat.method_b.value": 191.23,
            "preheat.method_a.value": None,
            "preheat.method_a.scale": "D",
            "preheat.method_a.combined_most.value": 1.968504,
            "welded_at.value": 68.0,
        },
        """No code asked: AWS D1.1 lists A572-50, so its table rules: over 3/4 to 1-1/2 in, category
        B, 50 F, under the shop's 68 F. Method B stands beside it with its 191 F. Method A: CE .433
        is over .43, so the column of .49 counts; H5 is scale D; 1.26 kJ/mm counts as 1.0: to 50
        mm = 1.9685 in combined, and the joint has 2.375 in: the table does not settle it.""",
        share=2e-4,
    ),
    Worked(
        "heat",
        f"{JOB}&steel=A572-50",
        {
            "melt": "typical",
            "carbon_equivalents.ce.worst": 0.485,
            "carbon_equivalents.cet.worst": 0.365,
        },
        """The most the grade allows, C .23, Mn 1.35 (TI 809-26 Table 4-3), V .15 (ASTM A572, type
        2): CE .23 + 1.35/6 + .15/5 = .485; CET .23 + 1.35/10 = .365.""",
    ),
    Worked(
        "heat",
        f"{JOB}&steel=A992",
        {"carbon_equivalents.ce.worst": 0.45, "carbon_equivalents.cet.worst": 0.368},
        """TI 809-26 Table 4-3: C .23, Mn 1.5, Cr .35, Mo .15, V .11, Ni .45, Cu .6. CE .23 + .25 +
        .61/5 + 1.05/15 = .672, but ASTM A992 allows .45 in all. CET gets most from C (1 for 1 of
        CE), then Cu (15/20), then Mn (6/10): C .23, Cu .6 takes .04 of CE, Mn the .18 left, 1.08:
        CET .23 + .6/20 + 1.08/10 = .368.""",
    ),
    Worked(
        "heat",
        "joint=square&plate=25mm&plate2=25mm&gap=2mm&heat=3kJ/mm&steel=S355J2&units=si"
        "&preheat_code=en-a&hydrogen=8",
        {
            "preheat.by": "method-a",
            "preheat.value": 20.0,
            "preheat.needed": False,
            "preheat.method_a.ce": 0.410333,
            "preheat.method_a.scale": "C",
            "preheat.method_a.combined_most.value": 100.0,
            "combined_thickness.value": 50.0,
        },
        """Usual S355J2: CE .16 + 1.4/6 + (.04 + .01 + .005)/5 + (.04 + .05)/15 = .41033.
        Combined thickness of a butt 25 + 25 = 50. H8 is scale C. 0.8 x 3 = 2.4 kJ/mm counts as
        2.0, CE as .43: no preheat to 100 mm.""",
    ),
    Worked(
        "heat",
        "plate=2in&leg=1/2in&heat=60kJ/in&steel=A36&c=.05&mn=.3&units=si",
        {"preheat.value": 65.0, "preheat.by": "table", "welded_at.value": 65.0},
        "AWS D1.1 category B, over 1-1/2 to 2-1/2 in: 65 C, more than a lean melt needs.",
    ),
    Worked(
        "heat",
        "plate=3in&leg=1/2in&heat=60kJ/in&steel=A36&c=.05&mn=.3",
        {"preheat.value": 225.0, "preheat.by": "table", "welded_at.value": 225.0},
        "AWS D1.1 category B, over 2-1/2 in: 225 F, as the table prints it and not up to tens.",
    ),
    Worked(
        "heat",
        f"{JOB}&steel=unknown&{CERTIFICATE}",
        {"steel": None, "melt": "certificate", "preheat.table": None, "preheat.by": "method-b"},
        "A certificate without a grade: no row of the table, only the formula.",
    ),
    Worked(
        "heat",
        "plate=3/8in&leg=5/16in&heat=40kJ/in&steel=A36&c=.05&mn=.3&si=.1",
        {
            "preheat.by": "table",
            "preheat.value": 32.0,
            "preheat.needed": False,
            "welded_at.value": 68.0,
            "carbon_equivalents.ce.value": 0.1,
        },
        """CE .05 + .3/6 = .10. Method B asks below 0 C (outside its range a lean steel counts as
        its end), the table, category B to 3/4 in, 32 F; a shop stands at 20 C = 68 F.""",
    ),
    Worked(
        "heat",
        "plate=3/8in&leg=5/16in&heat=40kJ/in&steel=unknown",
        {
            "melt": None,
            "preheat.value": None,
            "preheat.by": "none",
            "preheat.table": None,
            "preheat.method_b": None,
            "hardness.value": None,
            "hardness.refused": "no analysis, no hardness",
            "cooling.regime": "thin",
        },
        "Nothing known of the steel, nothing said of preheat or hardness; heat flows all the same.",
    ),
    Worked(
        "heat",
        "joint=tee&plate=1/2in&plate2=3/8in&leg=5/16in&heat=40kJ/in&weld_length=6in",
        {
            "distortion.ways[yours].across.value": 0.0125492,
            "distortion.ways[yours].across.high": 0.0314961,
            "distortion.ways[yours].across.low_by": "AWS Welding Handbook",
            "distortion.ways[yours].across.high_by": "shop allowance",
        },
        """One fillet, leg 5/8 of the plate: by the handbook 1.02 mm x 0.625 / 2 = 0.31875 mm =
        0.01255 in; the shop's allowance, up to 3/4, is 0.8 mm = 0.0315 in.""",
    ),
)
