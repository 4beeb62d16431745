using CoatPlan.Climate;
using CoatPlan.Presets;

namespace CoatPlan.Tests.Climate;

public class WindowsOpenAndClose
{
    [Fact]
    public void At_the_labels_conditions_a_window_opens_after_the_last_piece_and_closes_after_the_first()
    {
        var windows = Recoat(70, Samples.Black, 100, 112);

        windows.ShouldBe([new RecoatOpening(0, 10, 122, 160), new RecoatOpening(1, 48 * 60, 112 + 48 * 60, null)]);
        windows.ShouldAllBe(window => !window.IsVoid);
    }

    /// <summary>88 °F is 10 °C warmer: the hour is over in 30 min, the ten minutes stay.</summary>
    [Fact]
    public void Heat_closes_a_window_early_and_does_not_open_it_sooner() =>
        Recoat(88, Samples.Black, 0, 0)[0].ShouldBe(new RecoatOpening(0, 10, 10, 30));

    [Fact]
    public void Cold_opens_a_window_later_and_does_not_keep_it_open() =>
        Recoat(52, Samples.Black, 0, 0)[0].ShouldBe(new RecoatOpening(0, 10, 20, 60));

    /// <summary>34 °F: a quarter of the pace, and the ten minutes of the second batch's end at 25 are over at 65.</summary>
    [Fact]
    public void A_window_that_closes_before_it_opens_is_void()
    {
        var windows = Recoat(34, Samples.Black, 0, 25);

        windows[0].ShouldBe(new RecoatOpening(0, 10, 65, 60));
        windows[0].IsVoid.ShouldBeTrue();
        windows[1].IsVoid.ShouldBeFalse();
    }

    [Fact]
    public void A_window_that_never_opens_is_void() =>
        Recoat(40, Samples.Black with { Limits = Samples.UsualLimits }, 0, 10)[1].ShouldBe(new RecoatOpening(1, 48 * 60, null, null));

    [Fact]
    public void Another_product_has_windows_of_its_own() =>
        Windows.Opens(Samples.Black, RecoatGap.Another, 0, Metal(70), 5).ShouldBe(5 + 48 * 60);

    /// <summary>The table says 20 min–90 min at 50 °F and 5 min–30 min at 90 °F. The label's 10 min and its hour stay the widest that a window is.</summary>
    [Fact]
    public void A_row_of_the_labels_table_has_windows_of_its_own()
    {
        var label = Samples.Black with
        {
            Recoat = [Samples.Window(10, 60)],
            TimesAt = [
                new StageTimesAt(Samples.Fahrenheit(50), Samples.Times(3), [Samples.Window(20, 90)]),
                new StageTimesAt(Samples.Fahrenheit(70), Samples.Times(1), [Samples.Window(10, 60)]),
                new StageTimesAt(Samples.Fahrenheit(90), Samples.Times(0.5), [Samples.Window(5, 30)])],
        };

        Recoat(50, label, 0, 0)[0].ShouldBe(new RecoatOpening(0, 10, 20, 60));
        Recoat(90, label, 0, 0)[0].ShouldBe(new RecoatOpening(0, 10, 10, 30));
    }

    [Fact]
    public void A_window_that_the_label_does_not_have_is_refused() =>
        Should.Throw<ArgumentOutOfRangeException>(() => Windows.Opens(Samples.Black, RecoatGap.Itself, 2, Metal(70), 0));

    private static SurfaceCurve Metal(double fahrenheit) => Samples.In(Samples.Steady(fahrenheit, 50)).Metal(Samples.Fender);

    private static ImmutableArray<RecoatOpening> Recoat(double fahrenheit, Label label, int start, int end) =>
        Windows.For(label, RecoatGap.Itself, Metal(fahrenheit), start, end);
}
