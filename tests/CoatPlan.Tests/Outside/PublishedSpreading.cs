using CoatPlan.Paint;
using UnitsNet;

namespace CoatPlan.Tests.Outside;

/// <summary>Spreading rates of MIL-HDBK-1110 §2.1.5 and of trade notes. Source of each row: spreading.csv.</summary>
public sealed class PublishedSpreading
{
    [Fact]
    public void Spreading_agrees_with_the_printed_rates()
    {
        var rows = CheckValues.Rows("spreading.csv").Where(row => row["volumeSolidsPercent"].Length > 0).ToArray();

        rows.Length.ShouldBe(10);
        foreach (var row in rows)
        {
            var film = row["dryFilmUnit"] == "mil" ? Length.FromMils(row.Number("dryFilm")) : Length.FromMicrometers(row.Number("dryFilm"));
            var volume = row["unit"] == "ft2/gal" ? Volume.FromUsGallons(1) : Volume.FromLiters(1);
            var area = WetFilm.Covers(
                volume, Ratio.FromPercent(row.Number("volumeSolidsPercent")), film, Ratio.FromDecimalFractions(1 - (row.Maybe("transferEfficiency") ?? 1)));

            (row["unit"] == "ft2/gal" ? area.SquareFeet : area.SquareMeters)
                .ShouldBe(row.Number("expected"), Math.Max(row.Number("tolerance"), 1e-6), $"{row["source"]}: {row["volumeSolidsPercent"]} %, {row["dryFilm"]}");
        }
    }

    [Fact]
    public void A_dry_film_is_its_share_of_solids_of_the_wet_one() =>
        WetFilm.Dry(Length.FromMils(4), Ratio.FromPercent(50)).Mils.ShouldBe(2, 1e-12);
}
