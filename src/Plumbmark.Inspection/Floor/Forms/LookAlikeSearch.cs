using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Comparing;
using Plumbmark.Inspection.Floor.Measured;

namespace Plumbmark.Inspection.Floor.Forms;

/// <summary>What else than damage could have made the readings come out as they did: offered before damage is claimed.</summary>
internal static class LookAlikeSearch
{
    private const double NoSay = 0.1; // of a full say in the centre line: less, and the pair has been left out
    private const double Noticeable = 2; // standard uncertainties

    public static IReadOnlyList<LookAlike> Of(CarFile car, FrameEvaluation evaluation, LengthWords words)
    {
        var found = new List<LookAlike>();
        AddNotLevel(found, evaluation, words);
        AddHeightsFromFloor(found, car);
        AddCentreLine(found, evaluation, words);
        AddOfForms(found, evaluation, words);
        return found;
    }

    private static void AddNotLevel(List<LookAlike> found, FrameEvaluation evaluation, LengthWords words)
    {
        var stations = Stations.InHeight(evaluation.Frame);
        if (stations.Count < 2 || evaluation.Lie.Roll() is not var (slope, u))
        {
            return;
        }

        var width = Enumerable.Range(0, stations.Count).Average(stations.Width);
        if (Math.Abs(slope) > Noticeable * u && Math.Abs(slope) * width > words.DivisionMetres)
        {
            found.Add(new LookAlike("not-level", slope * width, u * width, LookAlikeWords.NotLevel(slope * width, words)));
        }
    }

    private static void AddHeightsFromFloor(List<LookAlike> found, CarFile car)
    {
        var fromFloor = car
            .StandingReadings.OfType<Reading.Height>()
            .Where(r => car.Tools.FirstOrDefault(t => t.Id == r.Tool)?.Kind is ToolKind.Tape or ToolKind.Rule)
            .ToList();
        if (fromFloor.Count > 1)
        {
            found.Add(new LookAlike("floor-slope", null, null, LookAlikeWords.HeightsFromFloor));
        }
    }

    /// <summary>What a centre line drawn from the first middle to the last would show, where one of the two is the bent one.</summary>
    private static void AddCentreLine(List<LookAlike> found, FrameEvaluation evaluation, LengthWords words)
    {
        var frame = evaluation.Frame;
        var stations = Stations.InPlan(frame);
        if (stations.Count < 4)
        {
            return;
        }

        double Middle(int s) => (frame.Y(stations.Pair(s).Left) + frame.Y(stations.Pair(s).Right)) / 2;
        double Say(int s) => evaluation.Lie.SayOfPair(frame.Pairs.ToList().IndexOf(stations.Pair(s))) ?? 1;
        var last = stations.Count - 1;
        foreach (var end in new[] { 0, last }.Where(s => Say(s) < NoSay))
        {
            var other = last - end;
            var slope = (Middle(end) - Middle(other)) / (stations.X(end) - stations.X(other));
            double Thrown(int s) => Middle(s) - Middle(other) - (slope * (stations.X(s) - stations.X(other)));
            var most = Enumerable
                .Range(1, last - 1)
                .Where(s => Say(s) >= NoSay)
                .DefaultIfEmpty(-1)
                .MaxBy(s => s < 0 ? 0 : Math.Abs(Thrown(s)));
            if (most >= 0 && Math.Abs(Thrown(most)) > words.DivisionMetres)
            {
                var sentence = LookAlikeWords.CentreLine(
                    stations.Name(end),
                    stations.Name(other),
                    stations.Name(most),
                    Thrown(most),
                    words
                );
                found.Add(new LookAlike("centre-line", Thrown(most), null, sentence));
            }
        }
    }

    private static void AddOfForms(List<LookAlike> found, FrameEvaluation evaluation, LengthWords words)
    {
        if (!DamageReport.IsClaimed(evaluation.Explanations))
        {
            return;
        }

        foreach (var part in evaluation.Explanations[0].Parts)
        {
            var (kind, sentence) = LookAlikeWords.OfForm(part, words);
            double? size = DamageReport.IsLookAlike(part) ? part.AmountMetres : null;
            found.Add(new LookAlike(kind, part.Form == DamageForm.TapeScale ? null : size, null, sentence));
        }
    }
}
