using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Journal;
using Plumbmark.Inspection.Language;
using Plumbmark.Store;
using Plumbmark.Web.Layout;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Floor;

/// <summary>Everything about one point on one page: where it is and how surely, its verdicts, readings, photos and history.</summary>
public sealed record StoryView
{
    private const int MostHistory = 30;

    /// <summary>The car.</summary>
    public required OpenCar Car { get; init; }

    /// <summary>The point.</summary>
    public required FramePoint Point { get; init; }

    /// <summary>The pair's name, or the point's; what it is, when told.</summary>
    public required string What { get; init; }

    /// <summary>Where it is, a line for each direction that is known.</summary>
    public required IReadOnlyList<(string Name, string Value)> Sizes { get; init; }

    /// <summary>Each check that the point has a part in, with its value and verdict.</summary>
    public required IReadOnlyList<(string Words, Verdict? Verdict)> Checks { get; init; }

    /// <summary>What is doubted about it, or could hide at it.</summary>
    public required IReadOnlyList<string> Remarks { get; init; }

    /// <summary>Its readings, newest first.</summary>
    public required IReadOnlyList<ReadingLine> Readings { get; init; }

    /// <summary>Photos of the point and of its readings.</summary>
    public required IReadOnlyList<PhotoOf> Photos { get; init; }

    /// <summary>What was done with it, newest first.</summary>
    public required IReadOnlyList<(string At, string Words)> History { get; init; }

    /// <summary>What was wrong with a photo.</summary>
    public required FieldFaults Faults { get; init; }

    /// <summary>The page for the point named in the address; null when there is none.</summary>
    public static StoryView? Of(CarRequest request, FieldFaults? faults = null)
    {
        var car = request.Car.File;
        if (car.Frame.Point(request.Part("point")) is not { } point)
        {
            return null;
        }

        var answer = request.Answers().For(request.Car);
        var readings = ReadingLine.Of(car, request.Car.Id, answer);
        var own = car.Readings.Where(r => r.Points.Contains(point.Id)).Select(r => r.Id).ToHashSet(StringComparer.Ordinal);
        return new StoryView
        {
            Car = request.Car,
            Point = point,
            What = point.Label ?? RoleWords.For(point.Role),
            Sizes = SizesOf(car, answer.Points.FirstOrDefault(p => p.Id == point.Id)),
            Checks = ChecksOf(car, answer, point.Id),
            Remarks =
            [
                .. answer.Suspects.Where(s => s.Point == point.Id || (s.Reading is { } r && own.Contains(r))).Select(s => s.Sentence),
                .. answer.BlindSpots.Where(b => b.Point == point.Id).Select(b => b.Sentence),
            ],
            Readings = [.. readings.Where(r => own.Contains(r.Id))],
            Photos = [.. car.Photos.Where(p => p.Point == point.Id || (p.Reading is { } r && own.Contains(r)))],
            History = HistoryOf(request.Car, point.Id, own),
            Faults = faults ?? new FieldFaults(),
        };
    }

    private static IReadOnlyList<(string, string)> SizesOf(CarFile car, PointEstimate? estimate)
    {
        var display = ShownLengths.Of(car);
        string Value(double metres, double? u) =>
            u is { } sure ? $"{display.Text(metres)} {display.PlusMinus(ShownLengths.Coverage * sure)}" : display.Text(metres);
        var sizes = new List<(string, string)>();
        if (estimate?.XMetres is { } x)
        {
            sizes.Add((Say("story.forward"), Value(x, estimate.UxMetres)));
        }

        if (estimate?.YMetres is { } y)
        {
            sizes.Add((Say(y >= 0 ? "story.left" : "story.right"), Value(Math.Abs(y), estimate.UyMetres)));
        }

        if (estimate?.ZMetres is { } z)
        {
            sizes.Add((Say("story.up"), Value(z, estimate.UzMetres)));
        }

        if (estimate?.Deviation is { } off)
        {
            var from = Say(off.Against == DeviationFrom.Nominal ? "story.off-book" : "story.off-mirror");
            var way = new[]
            {
                ("story.ahead", "story.back", off.DxMetres),
                ("story.to-left", "story.to-right", off.DyMetres),
                ("story.high", "story.low", off.DzMetres),
            }
                .Where(d => d.Item3 is { } v && display.Rounded(Math.Abs(v)) != Engine.Lengths.Length.Zero)
                .Select(d => $"{display.Text(Math.Abs(d.Item3!.Value))} {Say(d.Item3 > 0 ? d.Item1 : d.Item2)}")
                .ToList();
            sizes.Add((from, way.Count == 0 ? Say("story.nothing") : Texts.List(way)));
        }

        return sizes;
    }

    private static IReadOnlyList<(string, Verdict?)> ChecksOf(CarFile car, FloorAnswer answer, string point)
    {
        var display = ShownLengths.Of(car);
        return
        [
            .. answer
                .Checks.Where(c => c.Points.Contains(point))
                .Select(c =>
                    (
                        $"{Say($"story.check.{KindOf(c)}")}: {display.Text(Math.Abs(c.ValueMetres))} {display.PlusMinus(ShownLengths.Coverage * c.UMetres)}",
                        c.LimitMetres is null ? null : c.Verdict
                    )
                ),
        ];
    }

    private static string KindOf(Check check) =>
        check.Kind is "sideShift" or "stagger" or "width" or "heightDifference" or "deviationX" or "deviationY" or "deviationZ"
            ? check.Kind
            : "other";

    private static IReadOnlyList<(string, string)> HistoryOf(OpenCar car, string point, HashSet<string> readings)
    {
        var undone = Fold.UndoneIn([.. car.Entries.Select(e => e.Entry)]);
        bool Concerns(Act act) =>
            act switch
            {
                Act.PointDrawn a => a.Point.Id == point,
                Act.ReadingTaken a => a.Reading.Points.Contains(point),
                Act.ReadingWithdrawn a => readings.Contains(a.Id),
                Act.PhotoTaken a => a.Photo.Point == point,
                Act.PhotoPutAway a => a.Photo.Point == point,
                _ => false,
            };
        return
        [
            .. car
                .Entries.Where(e => Concerns(e.Entry.Act))
                .Reverse()
                .Take(MostHistory)
                .Select(e =>
                    (
                        e.Entry.At.ToLocalTime().ToString("yyyy-MM-dd HH:mm"),
                        undone.Contains(e.Entry.Id) ? Say("story.undone", ActWords.For(e.Entry.Act)) : ActWords.For(e.Entry.Act)
                    )
                ),
        ];
    }
}
