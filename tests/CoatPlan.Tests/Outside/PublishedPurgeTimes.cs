using CoatPlan.Vapour;
using UnitsNet;

namespace CoatPlan.Tests.Outside;

/// <summary>Minutes to clear a room by air changes per hour, perfectly mixed. Source: MMWR 43 RR-13 (1994) Table S3-1; all entries are whole minutes.</summary>
public sealed class PublishedPurgeTimes
{
    [Theory]
    [InlineData("minutesFor90", 0.1)]
    [InlineData("minutesFor99", 0.01)]
    [InlineData("minutesFor999", 0.001)]
    public void Clearing_agrees_to_the_whole_minute(string column, double left)
    {
        var rows = CheckValues.Rows("purge-times.csv");

        rows.Length.ShouldBe(20);
        foreach (var row in rows)
        {
            var room = new WorkRoom(
                Volume.FromCubicMeters(60), VolumeFlow.FromCubicMetersPerHour(60 * row.Number("airChangesPerHour")), Mixing: 1);

            var time = PurgeTime.Of(room, from: 1, to: left);

            time.ShouldNotBeNull();
            Math.Round(time.Value.TotalMinutes).ShouldBe(row.Number(column), $"{row["airChangesPerHour"]} air changes an hour");
        }
    }

    [Fact]
    public void A_poorly_mixed_room_takes_its_factor_longer_and_a_closed_one_for_ever()
    {
        var mixed = new WorkRoom(Volume.FromCubicMeters(60), VolumeFlow.FromCubicMetersPerMinute(6), Mixing: 1);

        PurgeTime.Of(mixed with { Mixing = 10 }, 1, 0.1)!.Value.TotalMinutes.ShouldBe(10 * PurgeTime.Of(mixed, 1, 0.1)!.Value.TotalMinutes, 1e-6);
        PurgeTime.Of(mixed with { Removal = VolumeFlow.Zero }, 1, 0.1).ShouldBeNull();
        PurgeTime.Of(mixed, 0.1, 1).ShouldBe(Duration.Zero);
    }
}
