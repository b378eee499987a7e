using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Round;

namespace Plumbmark.Web.Floor;

/// <summary>Where a person stands on the measuring round: the ends of the next line are filled in, and only the value is typed.</summary>
/// <param name="Left">Lines of this kind still to measure, those out of reach left out.</param>
/// <param name="LeftByKind">The same for every kind.</param>
public sealed record RoundStep(int Left, IReadOnlyDictionary<string, int> LeftByKind)
{
    /// <summary>Lines of every kind still to measure.</summary>
    public int LeftAtAll => LeftByKind.Values.Sum();

    /// <summary>The round of a car, without the lines that the form says are out of reach.</summary>
    public static RoundStep Of(CarFile car, EntryForm form)
    {
        var byKind = LinesLeft(car, form).CountBy(l => WordOf(l.Kind)).ToDictionary(StringComparer.Ordinal);
        return new RoundStep(byKind.GetValueOrDefault(form.Kind.Word), byKind);
    }

    /// <summary>The form with the next line of the round in it, when the person is on the round and has picked nothing.</summary>
    public static EntryForm Fill(EntryForm form, CarFile car)
    {
        if (!form.IsOnRound || form.Point.Length + form.From.Length + form.To.Length > 0)
        {
            return form;
        }

        // When a kind is done, the round goes on with what is left of the others: lengths, heights, drops.
        var left = LinesLeft(car, form).ToList();
        var next =
            left.Find(l => WordOf(l.Kind) == form.Kind.Word)
            ?? EntryKind.All.Select(k => left.Find(l => WordOf(l.Kind) == k.Word)).FirstOrDefault(l => l is not null);
        if (next is not null && WordOf(next.Kind) != form.Kind.Word)
        {
            // Another kind is read with another tool, and its tape starts nowhere.
            form = form with
            {
                Kind = EntryKind.Of(WordOf(next.Kind)),
                Tool = "",
                StartAt = "",
            };
        }

        return next switch
        {
            null => form,
            { To: { } to } => form with { From = next.From, To = to },
            _ => form with { Point = next.From },
        };
    }

    /// <summary>The name under which a line is skipped: its points.</summary>
    public static string NameOf(EntryForm form) => form.Point.Length > 0 ? form.Point : $"{form.From}~{form.To}";

    /// <summary>The names of the lines of this kind still to measure, with "!" between them: what a phone without a connection goes on with.</summary>
    public static string Names(CarFile car, EntryForm form) =>
        string.Join(
            '!',
            LinesLeft(car, form).Where(l => WordOf(l.Kind) == form.Kind.Word).Select(l => l.To is { } to ? $"{l.From}~{to}" : l.From)
        );

    private static IEnumerable<RoundLine> LinesLeft(CarFile car, EntryForm form)
    {
        var skipped = form.Skipped.Split('!').ToHashSet(StringComparer.Ordinal);
        return MeasuringRound.Usual(car).Where(l => !skipped.Contains(l.To is { } to ? $"{l.From}~{to}" : l.From));
    }

    private static string WordOf(RoundKind kind) =>
        kind switch
        {
            RoundKind.Height => "height",
            RoundKind.Rise => "rise",
            RoundKind.Drop => "drop",
            RoundKind.Direct => "direct",
            _ => "plan",
        };
}
