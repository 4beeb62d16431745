using CoatPlan.Problems;
using UnitsNet;

namespace CoatPlan.Jobs.Reading;

/// <summary>Reads <c>place</c>.</summary>
internal static class PlaceReading
{
    /// <returns>Null: a required part is missing or wrong, which is noted.</returns>
    public static Place? Read(MapReading? place)
    {
        if (place is null) return null;
        bool outdoors = place.Flag("outdoors") ?? false;
        var room = place.Map("room");
        var size = room is null ? null : RoomOf(room);
        var volume = place.Volume("volume");
        CheckForms(place, outdoors);
        var weather = WeatherReading.Read(place.Map("weather"));
        // Read without weather too: what else is wrong with the place is told in the same go.
        var read = new Place
        {
            Volume = size is null ? volume : Volume.FromCubicMeters(size.Length.Meters * size.Width.Meters * size.Height.Meters),
            Room = size,
            Outdoors = outdoors,
            Exhaust = place.Flow("exhaust") ?? VolumeFlow.Zero,
            Mixing = place.Number("mixing") ?? JobDefaults.Mixing,
            Hold = place.Temperature("hold"),
            Heater = place.Word<HeaterKind>("heater") ?? HeaterKind.Open,
            CoolsIn = place.Duration("cools-in") ?? JobDefaults.CoolsIn,
            SpraySpots = place.Whole("spray-spots") ?? JobDefaults.SpraySpots,
            Rack = place.Whole("rack"),
            Ignition = place.TextList("ignition"),
            Weather = weather!,
            Mark = place.Mark,
        };
        return weather is null ? null : read;
    }

    // "outdoors: false" says nothing: there is a room all the same.
    private static void CheckForms(MapReading place, bool outdoors)
    {
        string[] forms = ["room", "volume", "outdoors"];
        string[] there = [.. forms.Where(form => form == "outdoors" ? outdoors : place.Has(form))];
        if (there.Length == 1) return;
        bool outdoorsIsWrong = there.Length == 0 && place.Has("outdoors") && !string.Equals(place.Tried("outdoors"), "false", StringComparison.OrdinalIgnoreCase);
        if (outdoorsIsWrong) return;
        var mark = there.Length > 1 ? place.MarkOf(there[1]) : place.Mark;
        place.Context.Problems.Add(mark, Sentences.OneOf(place.What, forms, there));
    }

    private static RoomSize? RoomOf(MapReading room)
    {
        var length = room.Length("length");
        var width = room.Length("width");
        var height = room.Length("height");
        if (length is null || width is null || height is null) return null;
        return new() { Length = length.Value, Width = width.Value, Height = height.Value };
    }
}
