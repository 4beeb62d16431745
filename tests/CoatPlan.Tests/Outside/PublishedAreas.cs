using CoatPlan.Areas;

namespace CoatPlan.Tests.Outside;

/// <summary>
/// Surfaces of round bodies against a 19th-century mensuration textbook (p. 76, which takes π = 22/7) and the Building Trades Pocketbook (c. 1899).
/// Source of each row: areas.csv.
/// </summary>
public sealed class PublishedAreas
{
    [Fact]
    public void Round_bodies_agree_with_the_printed_tables()
    {
        var checkedRows = 0;
        foreach (var row in CheckValues.Rows("areas.csv"))
        {
            if (Area(row) is not { } area)
                continue;
            area.ShouldBe(row.Number("exactPi"), row["unit"] == "ft2" ? 0.01 : 1e-5, row["shape"]);
            area.ShouldBe(row.Number("printed"), row.Number("tolerance"), row["shape"]);
            checkedRows++;
        }

        checkedRows.ShouldBe(9, "every row but the volume of the torus");
    }

    private static double? Area(CheckRow row) => row["shape"] switch
    {
        "cone frustum, curved surface" when row["unit"] == "ft2" => OfSlant(One(row, "d1Ft"), One(row, "d2Ft"), One(row, "slantFt")),
        "cone, curved surface" when row["unit"] == "ft2" => OfSlant(One(row, "dFt"), 0, One(row, "slantFt")),
        "cylinder, curved surface" => Outline.Tube(One(row, "d"), One(row, "h"), ends: 0, wallFaces: 1),
        "cylinder, whole surface" => Outline.Tube(One(row, "d"), One(row, "h"), ends: 2, wallFaces: 1),
        "cone, curved surface" => OfSlant(One(row, "d"), 0, One(row, "slant")),
        "cone frustum, curved surface" => OfSlant(One(row, "d1"), One(row, "d2"), One(row, "slant")),
        "cone frustum, whole surface" =>
            OfSlant(One(row, "d1"), One(row, "d2"), One(row, "slant")) + Outline.Disc(One(row, "d1"), 1) + Outline.Disc(One(row, "d2"), 1),
        "sphere" => 2 * Outline.Dome(One(row, "d"), One(row, "d") / 2),
        "torus" => Outline.Bend(One(row, "sectionD"), One(row, "meanD") / 2, 2 * Math.PI),
        _ => null,
    };

    private static double OfSlant(double baseDiameter, double topDiameter, double slant)
    {
        var step = (baseDiameter - topDiameter) / 2;
        return Outline.Cone(baseDiameter, topDiameter, Math.Sqrt((slant * slant) - (step * step)));
    }

    private static double One(CheckRow row, string name) => row.Named("inputs", name)[0];
}
