using CoatPlan.Quantities;

namespace CoatPlan.Jobs.Reading;

/// <summary>Every key of the job file: the reader takes its bounds from here, the schema and the reference are written from it.</summary>
internal static class JobKeys
{
    public const string WindowDue = "a window such as `10 min-1 h`, `after 24 h` or `within 30 min`";

    // A number, then a word or a mark of a range, then a unit at the end: the schema sees the shape, the reader the rest.
    private const string WindowPattern = "([Aa][Ff][Tt][Ee][Rr]|[Ww][Ii][Tt][Hh][Ii][Nn]|[0-9½⅓⅔¼¾⅛⅜⅝⅞A-Za-z] *([-‐‑–—−…]|\\.\\.|[Tt][Oo] )) *[0-9½⅓⅔¼¾⅛⅜⅝⅞].*[A-Za-z]\\.? *$";

    private const string OpenOrRange = "[-‐‑–—−…<>≤≥]|\\.\\.|[A-Za-z]{2,} *[0-9]|[Tt][Oo] ";

    private const string ClockPattern = "([01]?[0-9]|2[0-3]):[0-5][0-9]";

    private const string SpanPattern = ClockPattern + " *[-–] *(" + ClockPattern + "|24:00)";

    private const string DayPattern = "[Mm][Oo][Nn]([Dd][Aa][Yy])?\\.?|[Tt][Uu][Ee]([Ss][Dd][Aa][Yy]|[Ss])?\\.?|[Ww][Ee][Dd]([Nn][Ee][Ss][Dd][Aa][Yy])?\\.?|[Tt][Hh][Uu]([Rr][Ss][Dd][Aa][Yy]|[Rr][Ss]?)?\\.?|[Ff][Rr][Ii]([Dd][Aa][Yy])?\\.?|[Ss][Aa][Tt]([Uu][Rr][Dd][Aa][Yy])?\\.?|[Ss][Uu][Nn]([Dd][Aa][Yy])?\\.?";

    private const string DatePattern = "[0-9]{4}-" + TimeForm.MonthAndDay;

    private static readonly Form Text = new TextForm();
    private static readonly Form Length = new QuantityForm(Dimension.Length, JobRanges.Length);
    private static readonly Form Area = new QuantityForm(Dimension.Area, JobRanges.Area);
    private static readonly Form Air = new QuantityForm(Dimension.Temperature, JobRanges.AirTemperature);
    private static readonly Form PartTemperature = new QuantityForm(Dimension.Temperature, JobRanges.PartTemperature);
    private static readonly Form Humidity = new QuantityForm(Dimension.Ratio, JobRanges.Humidity);
    private static readonly Form Time = new QuantityForm(Dimension.Duration, JobRanges.Time);
    private static readonly Form TimeMoreThanNone = new QuantityForm(Dimension.Duration, JobRanges.TimeMoreThanNone);
    private static readonly Form Pressure = new QuantityForm(Dimension.Pressure, JobRanges.Pressure);
    private static readonly Form Sides = new WholeForm(JobRanges.Sides);
    private static readonly Form Windows = new OneOrListForm(new WrittenForm(WindowDue, "10 min-1 h", WindowPattern), Least: 1);
    private static readonly Form Lightness = new EitherForm(new WordForm("lightness", _ => JobWords.Lightness), new NumberForm(JobRanges.LStar));
    private static readonly Form Amount = new WrittenForm("packages as a bare number, or a mass, a volume, a length or an area", "2", "^[0-9]");

    private static readonly Form Hours = new KeyedForm(
        new OneOrListForm(new WrittenForm("a span such as `16:00-21:00`, or `none`", "16:00-21:00", "^( *" + SpanPattern + " *(, *" + SpanPattern + " *)*|[Nn][Oo][Nn][Ee])$")),
        "^ *((" + DayPattern + ")( *[-–] *(" + DayPattern + "))?|" + DatePattern + ") *$");

    public static readonly KeyTable Room = Map("`room`",
        Must("length", Length, "inside length"),
        Must("width", Length, "inside width"),
        Must("height", Length, "inside height"));

    public static readonly KeyTable Steady = Map("`steady`",
        Must("air", Air, "air temperature"),
        Must("humidity", Humidity, "relative humidity"));

    public static readonly KeyTable Daily = Map("`daily`",
        Must("low", Air, "lowest air temperature of the day"),
        Must("high", Air, "highest air temperature of the day"),
        May("dew-point", Air, "dew point; or `humidity`"),
        May("humidity", Humidity, "relative humidity at the day's mean air; or `dew-point`")) with { Agreeing = OneOf("dew-point", "humidity") };

    public static readonly KeyTable Weather = Map("`weather`",
        May("steady", new MapForm(() => Steady), "the same air all the time"),
        May("daily", new MapForm(() => Daily), "the same day over and over"),
        May("hours", new TextForm("forecast.csv"), "a forecast in a file beside the job")) with { Agreeing = OneOf("steady", "daily", "hours") };

    public static readonly KeyTable Place = Map("`place`",
        May("room", new MapForm(() => Room), "the room as a box"),
        May("volume", new QuantityForm(Dimension.Volume, JobRanges.RoomVolume), "volume of air, instead of a room"),
        May("outdoors", new FlagForm(), "true: no room", "indoors"),
        May("exhaust", new QuantityForm(Dimension.Flow, JobRanges.Exhaust), "air led outdoors while vapour is present", "`0 ft3/min`"),
        May("mixing", new NumberForm(JobRanges.Mixing), "mixing factor K, 1 is perfect", "`5`"),
        May("hold", Air, "least air temperature that a heater keeps", "no heater"),
        May("heater", Words<HeaterKind>("heater"), "what the heater does while vapour is in the air", "`open`"),
        May("cools-in", TimeMoreThanNone, "time constant of the air once the heater is off", "`30 min`"),
        May("spray-spots", new WholeForm(JobRanges.Stations), "batches that can be sprayed at once", "`1`"),
        May("rack", new WholeForm(JobRanges.Pieces), "pieces that can hang or lie wet", "no limit"),
        May("ignition", new OneOrListForm(Text), "what could light vapour", "none"),
        Must("weather", new MapForm(() => Weather), "the air without the heater")) with
    {
        Agreeing = """[{"oneOf": [{"required": ["room"]}, {"required": ["volume"]}, {"required": ["outdoors"], "properties": {"outdoors": {"const": true}}}]}]""",
    };

    public static readonly KeyTable Crew = Map("`crew`",
        Must("people", new WholeForm(JobRanges.People), "people at each station"),
        May("stations", new WholeForm(JobRanges.Stations), "stations that each do all the surfaces on their own piece", "`1`"),
        Must("hours", Hours, "working hours by date, day or range of days"),
        May("set-up", Time, "time at the start of each working span", "`0 min`"),
        May("put-away", Time, "time at the end of each working span", "`0 min`")) with
    {
        Agreeing = """[{"not": {"properties": {"hours": {"additionalProperties": {"type": "string", "pattern": "^[Nn][Oo][Nn][Ee]$"}}}}}]""",
    };

    public static readonly KeyTable Package = Map("`package`",
        May("net", new WrittenForm("a mass such as `12 oz` or a volume such as `12 fl oz`", "12 oz", "[0-9]"), "net contents"),
        May("price", new MoneyForm(), "price of one package"),
        May("pack", new WholeForm(JobRanges.Pack), "packages sold together", "`1`"));

    public static readonly KeyTable At = Map("`at`",
        May("air", Air, "air temperature at which the times hold", "`70 °F`"),
        May("humidity", Humidity, "relative humidity at which the times hold", "`50 %`"));

    public static readonly KeyTable Times = Map("`times`",
        May("dust", Time, "dust no longer sticks", "touch"),
        May("touch", Time, "dry to the touch"),
        May("tape", Time, "can be taped over", "handle"),
        May("handle", Time, "can be handled and refitted"),
        May("through", Time, "dry through"),
        May("service", Time, "ready for service"));

    public static readonly KeyTable TimesAt = Map("`times-at`",
        [Must("air", Air, "air temperature of the row"), May("humidity", Humidity, "relative humidity of the row"), .. Times.Keys,
            May("recoat", Windows, "windows for the same product"), May("topcoat", Windows, "windows for another product over it")]);

    public static readonly KeyTable Limits = Map("`limits`",
        May("air", new RangeForm(Dimension.Temperature, JobRanges.AirTemperature, "50-90 °F", OpenOrRange), "range of air temperature"),
        May("surface", new RangeForm(Dimension.Temperature, JobRanges.PartTemperature, "50-90 °F", OpenOrRange), "range of surface temperature"),
        May("humidity", new RangeForm(Dimension.Ratio, JobRanges.Humidity, "85 %"), "most humidity, or a range"),
        May("above-dew", new QuantityForm(Dimension.Temperature, JobRanges.AboveDew), "least distance of the surface above the dew point"));

    public static readonly KeyTable CureStage = Map("a stage of `cure`",
        Must("at", PartTemperature, "temperature of the part"),
        Must("for", TimeMoreThanNone, "how long it is held"));

    public static readonly ImmutableArray<KeySpec> LabelKeys =
    [
        May("name", Text, "what it is called"),
        May("package", new MapForm(() => Package), "what is bought"),
        May("covers", Area, "area that one package covers in one coat on a flat panel, ordinary loss included"),
        May("solids", new QuantityForm(Dimension.Ratio, JobRanges.Share), "solids by volume of the whole contents"),
        May("density", new QuantityForm(Dimension.Density, JobRanges.Density), "density of the whole contents"),
        May("dry-film", new QuantityForm(Dimension.Length, JobRanges.DryFilm), "dry film of one coat"),
        May("hiding", new EitherForm(new WordForm("hiding", _ => JobWords.Hiding), new NumberForm(JobRanges.ContrastRatio)), "how well one coat hides"),
        May("lightness", Lightness, "how light the dry film is"),
        May("coats", new WrittenForm("a number of coats or a range such as `2-3`", "2-3", "^[0-9]+( *- *[0-9]+)?$"), "coats that the label allows"),
        May("method", Words<ApplicationMethod>("method"), "how it is put on"),
        May("loss", new QuantityForm(Dimension.Ratio, JobRanges.ShareBelowWhole), "share lost on a flat panel"),
        May("drying", Words<DryingKind>("drying"), "how it dries"),
        May("at", new MapForm(() => At), "the air at which the times hold"),
        May("times", new MapForm(() => Times), "drying times"),
        May("times-at", new ListForm(new MapForm(() => TimesAt), Least: 0), "the label's own table of times by air temperature"),
        May("recoat", Windows, "windows for the next coat of the same product"),
        May("topcoat", Windows, "windows for another product over it", "as `recoat`"),
        May("missed", Words<MissedRework>("rework"), "what a missed window asks", "`scuff`"),
        May("use-within", TimeMoreThanNone, "pot life from activation"),
        May("limits", new MapForm(() => Limits), "limits of air, surface and humidity"),
        May("heat", PartTemperature, "temperature that the cured film stands for good"),
        May("heat-peak", PartTemperature, "temperature that the cured film stands for a short time"),
        May("cure", new ListForm(new MapForm(() => CureStage), Least: 0), "staged heat"),
        May("solvents", new KeyedForm(new RangeForm(Dimension.Ratio, JobRanges.Share, "10-15 %")), "solvents by share of mass; a range counts at its upper end"),
        May("hazards", new OneOrListForm(new WordForm("hazard", words => words.Hazards)), "hazards of the data sheet"),
        May("label-says", new OneOrListForm(new TextForm("Keep away from flame.")), "sentences of the label"),
    ];

    public static readonly KeyTable Product = Map("a product",
        [May("preset", new WordForm("product preset", words => words.ProductPresets), "class that fills what is missing"), .. LabelKeys]) with
    {
        Agreeing = """[{"anyOf": [{"required": ["preset"]}, {"required": ["times", "recoat", "limits"], "anyOf": [{"required": ["covers"]}, {"required": ["solids"]}]}]}]""",
    };

    public static readonly KeyTable TestPanel = Map("a test panel",
        Must("product", new TextForm("black"), "key of a product"),
        Must("area", Area, "area that was coated, once"),
        Must("coats", new WholeForm(JobRanges.Coats), "full coats that were put on"),
        May("used", Amount, "what all of them used: the difference of two weighings"),
        May("hides-after", new WholeForm(JobRanges.Coats), "fewest coats at which black and white below no longer differed"),
        May("film", new QuantityForm(Dimension.Length, JobRanges.DryFilm), "dry film of all the coats together"),
        May("times", new MapForm(() => Times), "when each stage was reached, from the end of the last coat"),
        May("air", Air, "air at which it dried; that of the label", "that of the label"));

    public static readonly KeyTable Layer = Map("a layer",
        Must("product", new TextForm("black"), "key of a product"),
        May("coats", new WholeForm(JobRanges.Coats), "full coats; the label's least", "the label's least"),
        May("mist", new FlagForm(), "one mist coat before them", "`false`"),
        May("only", new WordForm("part of a surface", _ => ["bare"]), "bare: just the bare spots", "the whole surface"));

    public static readonly KeyTable Mask = Map("a mask",
        Must("what", Text, "what is masked"),
        May("kind", new WordForm("mask kind", words => words.MaskKinds), "what kind of thing it is"),
        May("edge", Length, "length of tape", "by the presets"),
        May("area", Area, "area of film", "by the presets"));

    public static readonly KeyTable Surface = Map("a surface",
        Must("name", Text, "what it is called"),
        May("id", Text, "id; from the name", "from the name"),
        May("count", new WholeForm(JobRanges.Pieces), "pieces", "`1`"),
        Must("material", new WordForm("material", words => words.Materials), "what it is made of"),
        May("finish", new WordForm("finish", words => words.Finishes), "old finish", "`unknown`"),
        May("condition", new OneOrListForm(new WordForm("condition", words => words.Conditions), Least: 1), "how it is", "`[sound]`"),
        May("area", Area, "area of one piece; or `shape`"),
        May("shape", new ListForm(new MapForm(() => Shape!)), "shapes of one piece; or `area`"),
        May("spread", new QuantityForm(Dimension.Ratio, JobRanges.ShareBelowWhole), "plus or minus share of the area", "`15 %` for a figure, `5 %` for shapes"),
        May("relief", new NumberForm(JobRanges.Relief), "true over outline area", "by material and form"),
        May("form", new WordForm("form", words => words.Forms), "how much spray misses", "`panel`"),
        May("gauge", new QuantityForm(Dimension.Length, JobRanges.Gauge), "thickness of the metal", "by material"),
        May("stays", new FlagForm(), "stays on the vehicle", "`false`"),
        May("faces", Words<FaceDirection>("direction of faces"), "which way the faces look", "`mixed`"),
        May("heat", PartTemperature, "hottest in service", "none"),
        May("lightness", Lightness, "how light it is now", "by finish"),
        May("bare-share", new QuantityForm(Dimension.Ratio, JobRanges.Share), "share bare after prep", "by condition"),
        May("lead-test", Words<LeadTestResult>("lead test"), "result of a test for lead", "none made"),
        May("near", new OneOrListForm(new WordForm("thing near a surface", words => words.Near)), "what is near it", "nothing"),
        Must("system", new TextForm("black-on-metal"), "key of a system"),
        May("mask", new ListForm(new MapForm(() => Mask), Least: 0), "what must be masked on one piece", "nothing listed")) with { Agreeing = OneOf("area", "shape") };

    public static readonly KeyTable Panel = ShapeMap("panel", Must("length", Length, "length"), Must("width", Length, "width"), May("sides", Sides, "sides that count", "`1`"));
    public static readonly KeyTable Disc = ShapeMap("disc", Must("diameter", Length, "diameter"), May("sides", Sides, "sides that count", "`1`"));
    public static readonly KeyTable Ring = ShapeMap("ring", Must("outer", Length, "outer diameter"), Must("inner", Length, "inner diameter"), May("sides", Sides, "sides that count", "`1`"));
    public static readonly KeyTable Box = ShapeMap("box", Must("length", Length, "length"), Must("width", Length, "width"), Must("height", Length, "height"),
        May("faces", new WholeForm(JobRanges.Faces), "6 all, 5 no top, 4 sides only", "`6`"));
    public static readonly KeyTable Tube = ShapeMap("tube", Must("diameter", Length, "diameter"), Must("length", Length, "length"),
        May("ends", new WholeForm(JobRanges.Ends), "closed ends that count", "`0`"), May("inside", new FlagForm(), "whether the inside counts", "`false`"));
    public static readonly KeyTable Cone = ShapeMap("cone", Must("base", Length, "diameter at the base"),
        May("top", new QuantityForm(Dimension.Length, JobRanges.LengthOrNone), "diameter at the top", "`0 in`"), Must("height", Length, "height"));
    public static readonly KeyTable Dome = ShapeMap("dome", Must("diameter", Length, "diameter of the rim"), Must("height", Length, "height over the rim"));
    public static readonly KeyTable Bend = ShapeMap("bend", Must("diameter", Length, "diameter of the tube"), Must("radius", Length, "radius to the tube's middle"),
        May("angle", new QuantityForm(Dimension.Angle, JobRanges.Angle), "angle of the bend", "`90°`"));
    public static readonly KeyTable Channel = ShapeMap("channel", Must("web", Length, "width of the web"), Must("flange", Length, "width of each flange"), Must("length", Length, "length"));
    public static readonly KeyTable Angle = ShapeMap("angle", Must("leg-a", Length, "width of one leg"), Must("leg-b", Length, "width of the other leg"), Must("length", Length, "length"));

    public static readonly ImmutableArray<(string Name, KeyTable Table)> Shapes =
    [
        ("panel", Panel), ("disc", Disc), ("ring", Ring), ("box", Box), ("tube", Tube), ("cone", Cone), ("dome", Dome), ("bend", Bend),
        ("channel", Channel), ("angle", Angle),
    ];

    public static readonly KeyTable Shape = Map("a shape",
        [.. Shapes.Select(shape => May(shape.Name, new MapForm(() => shape.Table), shape.Name))]) with { Agreeing = OneOf([.. Shapes.Select(shape => shape.Name)]), Inside = ["count", "less"] };

    public static readonly KeyTable ConsumablePrice = Map("the price of a consumable",
        Must("price", new MoneyForm(), "price of one pack"),
        May("pack", new WholeForm(JobRanges.Pack), "how many of its unit are in one pack", "by the presets"));

    public static readonly KeyTable Prices = Map("`prices`",
        May("labour", new QuantityForm(Dimension.MoneyPerHour, JobRanges.Money), "price of one hour of labour", "no quote of labour"),
        May("markup", new QuantityForm(Dimension.Ratio, JobRanges.OpenShare), "share added to materials", "`0 %`"),
        May("tax", new QuantityForm(Dimension.Ratio, JobRanges.Share), "tax as a share", "`0 %`"),
        May("tax-on", Words<TaxBase>("base of the tax"), "what tax is laid on", "`materials`"),
        May("currency", new WrittenForm("an ISO 4217 code such as `USD`", "USD", "^[A-Za-z]{3}$"), "currency of all prices", "`USD`"),
        May("consumables", new KeyedForm(new MapForm(() => ConsumablePrice)), "consumable → its price"));

    public static readonly KeyTable PressureTest = Map("`pressure-test`",
        May("cap", Pressure, "rating on the cap"),
        Must("start", Pressure, "pressure at the start"),
        Must("end", Pressure, "pressure at the end"),
        May("after", TimeMoreThanNone, "how long it was held"));

    public static readonly KeyTable Checks = Map("`checks`",
        May("cylinder-pressures", new ListForm(Pressure, Least: 0), "pressure of each cylinder"),
        May("pressure-test", new MapForm(() => PressureTest), "pressure hold of the cooling system"));

    public static readonly KeyTable Readings = Map("`readings`",
        May("air", Air, "air temperature"),
        May("metal", PartTemperature, "temperature of the metal"),
        May("humidity", Humidity, "relative humidity"),
        May("film", new QuantityForm(Dimension.Length, JobRanges.DryFilm), "dry film of the coat itself; thicker than the label's dries slower"));

    public static readonly KeyTable Done = Map("an entry of `done`",
        May("surface", Text, "id of a surface"),
        May("surfaces", new OneOrListForm(Text), "ids of surfaces"),
        May("operation", new WordForm("operation", words => words.Operations), "what was done"),
        May("layer", new WholeForm(JobRanges.Coats), "layer of the system, from 1"),
        May("coat", new WholeForm(JobRanges.DoneCoat), "coat of the layer, from 1; 0: the mist coat"),
        May("at", new TimeForm(), "when it ended"),
        May("took", Time, "hands-on time"),
        May("cans", Amount, "cans used, or the mass or volume left"),
        May("readings", new MapForm(() => Readings), "what was read"),
        May("note", Text, "free text")) with
    {
        Agreeing = """
            [
              {"not": {"required": ["surface", "surfaces"]}},
              {"anyOf": [{"required": ["operation"]}, {"required": ["layer", "coat"]}]},
              {"if": {"anyOf": [{"required": ["layer"]}, {"required": ["coat"]}]}, "then": {
                "required": ["layer", "coat"],
                "anyOf": [{"required": ["surface"]}, {"required": ["surfaces"]}],
                "properties": {"operation": {"pattern": "^ *[Cc][Oo][Aa][Tt] *$"}}
              }}
            ]
            """,
    };

    public static readonly KeyTable Job = Map("the job",
        Must("coatplan", new WholeForm(JobRanges.Format), "format number"),
        Must("job", new TextForm("Engine bay"), "what the job is called"),
        May("notes", Text, "free text"),
        May("units", Words<PrintUnits>("units"), "how plans print", "`us`"),
        Must("start", new TimeForm(), "nothing is planned before it"),
        May("finish-by", new TimeForm(), "when everything must be back together", "as soon as can be"),
        May("as-of", new TimeForm(), "nothing undone is planned before it", "the start"),
        May("reserve", new QuantityForm(Dimension.Ratio, JobRanges.OpenShare), "share added to the likely paint demand", "`10 %`"),
        May("tape-limit", TimeMoreThanNone, "longest time tape stays on", "`24 h`"),
        May("built", new WholeForm(JobRanges.Built), "year of the vehicle", "not known"),
        Must("place", new MapForm(() => Place), "where the work is done"),
        Must("crew", new MapForm(() => Crew), "who works, and when"),
        Must("products", new KeyedForm(new MapForm(() => Product)), "key of a product → its label"),
        Must("systems", new KeyedForm(new ListForm(new MapForm(() => Layer))), "key of a system → its layers"),
        Must("surfaces", new ListForm(new MapForm(() => Surface)), "what is refinished"),
        May("have", new KeyedForm(Amount), "what is on the shelf"),
        May("test-panels", new ListForm(new MapForm(() => TestPanel), Least: 0), "what panels that were sprayed for a test gave"),
        May("prices", new MapForm(() => Prices), "what a quote counts with"),
        May("checks", new MapForm(() => Checks), "checks made before the work"),
        May("done", new ListForm(new MapForm(() => Done), Least: 0), "what has been done already"));

    private static string OneOf(params ImmutableArray<string> names) =>
        $$"""[{"oneOf": [{{string.Join(", ", names.Select(name => $$"""{"required": ["{{name}}"]}"""))}}]}]""";

    private static WordForm Words<T>(string what)
        where T : struct, Enum => new WordForm(what, _ => JobWords.Of<T>());

    private static KeyTable Map(string what, params ImmutableArray<KeySpec> keys) => new(what, keys);

    private static KeyTable ShapeMap(string name, params ImmutableArray<KeySpec> keys) => new($"`{name}`",
        [.. keys, May("count", new WholeForm(JobRanges.Pieces), "how many", "`1`"),
            May("less", new ListForm(new MapForm(() => Shape!), Least: 0), "shapes taken away, once for the shape as a whole")]);

    private static KeySpec Must(string name, Form form, string says) => new(name, form, says, IsRequired: true);

    private static KeySpec May(string name, Form form, string says, string unless = "") => new(name, form, says) { Unless = unless };
}
