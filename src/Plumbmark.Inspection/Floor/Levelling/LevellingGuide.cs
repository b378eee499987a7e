using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Floor.Levelling;

/// <summary>Levels a frame on three stands and reads the fourth: a frame wound up until four stands agree hides its own twist.</summary>
public static class LevellingGuide
{
    // A water level is read to about 1/32 in (common practice, no source); less needs no shim.
    private const double NoShimMetres = 0.8e-3;

    // A corner this far off is twist for sure, whatever the level did: three times what two readings of 1/32 in leave.
    private const double ClearTwistMetres = 3.2e-3;

    /// <summary>What the readings at the stands and of the floor say; null when fewer than three stands were read and nothing else is told.</summary>
    public static LevellingAnswer? For(CarFile car)
    {
        if (car.Level is not { IsEmpty: false } level)
        {
            return null;
        }

        var words = LengthWords.For(car);
        var warnings = new List<string>();
        var sentences = new List<string>();
        AddFloor(level, words, sentences, warnings);
        AddPlumb(level, words, warnings);
        if (level.Stands.Count < 3)
        {
            sentences.Insert(0, LevellingWords.TooFew);
            return new LevellingAnswer([], null, false, sentences, warnings);
        }

        var three = ThreeOf(level.Stands);
        var highest = three.Max(Excess);
        var stands = three.Select(s => Advice(s, highest - Excess(s), words)).ToList();
        var fourth = FourthOf(level.Stands, three, words);
        var isLevel = stands.TrueForAll(s => s.RaiseMetres <= NoShimMetres);
        sentences.InsertRange(0, [LevellingWords.Three([.. three.Select(s => s.Id)]), .. stands.Select(s => s.Sentence)]);
        if (fourth is not null)
        {
            sentences.Add(fourth.Sentence);
            warnings.Add(LevellingWords.NeverFour);
        }

        warnings.Add(LevellingWords.Caution);
        return new LevellingAnswer(stands, fourth, isLevel, sentences, warnings);
    }

    /// <summary>How far a stand is above where it should be.</summary>
    private static double Excess(StandReading stand) => stand.Height.Metres - (stand.Should?.Metres ?? 0);

    /// <summary>The two rearmost, and of the others the one nearest the middle; with corners only, the front one that asks for the least shims.</summary>
    private static IReadOnlyList<StandReading> ThreeOf(IReadOnlyList<StandReading> stands)
    {
        var byRear = stands.OrderBy(s => s.X.Metres).ToList();
        var rear = byRear.Take(2).ToList();
        double Shims(StandReading front) => rear.Append(front).Max(Excess) * 3 - rear.Append(front).Sum(Excess);
        var front = byRear.Skip(2).OrderBy(s => Math.Round(Math.Abs(s.Y.Metres), 2)).ThenBy(Shims).First();
        return [.. rear, front];
    }

    private static StandAdvice Advice(StandReading stand, double raise, LengthWords words) =>
        new(stand.Id, raise, LevellingWords.Raise(stand.Id, raise > NoShimMetres ? raise : 0, words));

    /// <summary>The stand that is off the plane of the three most: levelling turns the frame as a whole and does not change that.</summary>
    private static StandAdvice? FourthOf(IReadOnlyList<StandReading> all, IReadOnlyList<StandReading> three, LengthWords words)
    {
        var plane = PlaneThrough(three);
        if (plane is null)
        {
            return null;
        }

        var others = all.Except(three).Select(s => (Stand: s, Off: Excess(s) - plane(s))).ToList();
        if (others.Count == 0)
        {
            return null;
        }

        var (stand, off) = others.MaxBy(o => Math.Abs(o.Off));
        return new StandAdvice(stand.Id, off, LevellingWords.Fourth(stand.Id, off, Math.Abs(off) > ClearTwistMetres, words));
    }

    private static Func<StandReading, double>? PlaneThrough(IReadOnlyList<StandReading> three)
    {
        var (a, b, c) = (three[0], three[1], three[2]);
        var (bx, by) = (b.X.Metres - a.X.Metres, b.Y.Metres - a.Y.Metres);
        var (cx, cy) = (c.X.Metres - a.X.Metres, c.Y.Metres - a.Y.Metres);
        var area = (bx * cy) - (by * cx);
        const double LeastAreaMetres2 = 0.01; // a triangle as long as a hand carries no frame
        if (Math.Abs(area) < LeastAreaMetres2)
        {
            return null;
        }

        var (bz, cz) = (Excess(b) - Excess(a), Excess(c) - Excess(a));
        var forward = ((bz * cy) - (cz * by)) / area;
        var left = ((cz * bx) - (bz * cx)) / area;
        return s => Excess(a) + (forward * (s.X.Metres - a.X.Metres)) + (left * (s.Y.Metres - a.Y.Metres));
    }

    private static void AddFloor(LevelSection level, LengthWords words, List<string> sentences, List<string> warnings)
    {
        if (FloorSurface.Through(level.Floor) is { } floor)
        {
            sentences.Add(LevellingWords.Floor(floor.SlopeForward, floor.SlopeLeft, words));
        }
        else if (level.Floor.Count > 0)
        {
            warnings.Add(LevellingWords.FloorTooFew);
        }
    }

    private static void AddPlumb(LevelSection level, LengthWords words, List<string> warnings)
    {
        const double NoticeableSlope = 0.0013; // 1/32 in over 24 in, what an eye sees at the foot of a level
        if (level.Plumb is { } plumb && Math.Abs(plumb.Gap.Metres / plumb.Length.Metres) is var slope && slope > NoticeableSlope)
        {
            warnings.Add(LevellingWords.PlumbDisagrees(slope, words));
        }
    }
}
