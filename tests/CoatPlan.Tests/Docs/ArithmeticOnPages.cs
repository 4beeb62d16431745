using System.Globalization;
using System.Text.RegularExpressions;

namespace CoatPlan.Tests.Docs;

/// <summary>Sums that a page writes out, such as `4 × 9.50 = 38.00`, are reckoned again; the result must be right to the digits it is written with.</summary>
public sealed class ArithmeticOnPages
{
    private static readonly Regex Sum = new(@"`([-0-9.,()\s+−×÷/^²·explnqrtπ]+?) = (−?[0-9.,]+)[^`0-9]*`");

    public static TheoryData<string, string, string> Sums
    {
        get
        {
            var sums = new TheoryData<string, string, string>();
            foreach (var (page, match) in DocsPage.All.SelectMany(page => page.Prose.SelectMany(line => Sum.Matches(line)).Select(match => (page.Name, match))))
                sums.Add(page, match.Groups[1].Value, match.Groups[2].Value);
            return sums;
        }
    }

    [Theory]
    [MemberData(nameof(Sums))]
    public void A_sum_is_right(string page, string sum, string result)
    {
        var written = result.Replace(",", "", StringComparison.Ordinal).Replace('−', '-');
        var decimals = written.Contains('.', StringComparison.Ordinal) ? written.Length - written.IndexOf('.', StringComparison.Ordinal) - 1 : 0;

        new Reckoning(sum).Value.ShouldBe(double.Parse(written, CultureInfo.InvariantCulture), 0.5000001 * Math.Pow(10, -decimals), $"{page}: {sum}");
    }

    [Fact]
    public void There_are_sums() => Sums.Count.ShouldBeGreaterThan(20);

    [Theory]
    [InlineData("2 × (3 + 4)", 14)]
    [InlineData("2^(−5.6/10)", 0.678302)]
    [InlineData("610.94 × exp(1)", 1660.707)]
    [InlineData("10 − 4 − 3", 3)]
    [InlineData("sqrt(9) × π", 9.424778)]
    public void Sums_are_reckoned_as_on_paper(string sum, double result) => new Reckoning(sum).Value.ShouldBe(result, 1e-3);
}
