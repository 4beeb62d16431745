using CoatPlan.Sheets.Content;

namespace CoatPlan.Tests.Sheets;

public class WhyLineTests
{
    [Theory]
    [InlineData("Oil lies there. (SSPC-SP 1; published, read second-hand) More.", "Oil lies there. (SSPC-SP 1) More.")]
    [InlineData("Oil lies there. (common practice)", "Oil lies there.")]
    [InlineData("Sparks. (no electrical work: 29 CFR 1915.35(b); published)", "Sparks. (no electrical work: 29 CFR 1915.35(b))")]
    [InlineData("A label (read it) says so. (from memory)", "A label (read it) says so. (from memory)")]
    public void How_a_source_was_read_stays_with_the_plan(string why, string line) => WhyLine.Of(why).ShouldBe(line);
}
