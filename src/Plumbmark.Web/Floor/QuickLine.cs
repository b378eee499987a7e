using System.Text.RegularExpressions;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Language;
using Plumbmark.Web.Layout;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Floor;

/// <summary>A reading written in one line as a person scribbles it: <c>BL ER 61</c>, <c>D-E R 48 7/8</c>, <c>b.l height 13 1/16</c>, <c>C across 28</c>.</summary>
/// <remarks>
/// Forgiving in how points are written, never in which are meant: what could mean two things is refused with a sentence. Two points are a length along the floor,
/// one is a height; a word (height, direct, rise, drop, string) says otherwise. "from 10" behind the value is where the tape started.
/// </remarks>
public static partial class QuickLine
{
    private const int MostCharacters = 200;
    private static readonly string[] s_fillers = ["to", "and", "is", "=", "reads", "plan", "of", "-", "–", "→", "->"];
    private static readonly string[] s_kinds = ["height", "direct", "rise", "drop", "string", "across"];

    /// <summary>What became of a line. Closed.</summary>
    public abstract record Outcome
    {
        private Outcome() { }

        /// <summary>A reading under the name asked for.</summary>
        public sealed record Understood(Reading Reading) : Outcome;

        /// <summary>What was found and what is allowed.</summary>
        public sealed record NotUnderstood(string Sentence) : Outcome;

        /// <summary>One of the two.</summary>
        public T Match<T>(Func<Reading, T> understood, Func<string, T> notUnderstood) =>
            this switch
            {
                Understood u => understood(u.Reading),
                NotUnderstood n => notUnderstood(n.Sentence),
                _ => throw new System.Diagnostics.UnreachableException(),
            };
    }

    /// <summary>Reads a line. Never throws.</summary>
    /// <param name="text">The line; null or empty is told as such.</param>
    /// <param name="car">Whose points and units are meant.</param>
    /// <param name="id">The name of the new reading.</param>
    public static Outcome Read(string? text, CarFile car, string id)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            return No(Say("quick.nothing"));
        }

        if (text.Length > MostCharacters)
        {
            return No(Say("quick.too-long", text.Length, MostCharacters));
        }

        var (words, rest) = Split(text.Trim(), car);
        var kind = words.Find(w => s_kinds.Contains(w, StringComparer.OrdinalIgnoreCase))?.ToLowerInvariant() ?? "";
        var names = new PointNames(car.Frame);
        return names
            .Find(words.Where(w => !s_kinds.Contains(w, StringComparer.OrdinalIgnoreCase)), isAcross: kind == "across")
            .Match(points => WithValue(points, kind, rest, car, id), No);
    }

    /// <summary>Words up to the first that can only be a number; the rest is the value.</summary>
    private static (List<string> Words, string Value) Split(string text, CarFile car)
    {
        var names = new PointNames(car.Frame);
        var words = new List<string>();
        var at = 0;
        foreach (Match match in Word().Matches(text))
        {
            var word = match.Value.TrimEnd(',', ':', ';');
            // A point may be called 3.L: then it is a point as long as no two are found.
            if (StartsNumber(word) && !names.IsKnown(word))
            {
                break;
            }

            at = match.Index + match.Length;
            foreach (var part in names.IsKnown(word) ? [word] : word.Split(['-', '–', '→', '>'], StringSplitOptions.RemoveEmptyEntries))
            {
                if (!s_fillers.Contains(part, StringComparer.OrdinalIgnoreCase))
                {
                    words.Add(part);
                }
            }
        }

        return (words, text[at..].Trim());
    }

    private static bool StartsNumber(string word) =>
        word.Length > 0
        && (
            char.IsDigit(word[0])
            || char.IsNumber(word[0])
            || (word[0] is '-' or '−' or '+' or '.' && word.Length > 1 && char.IsNumber(word[1]))
        );

    private static Outcome WithValue(IReadOnlyList<string> points, string kind, string rest, CarFile car, string id)
    {
        var (valueText, startText) = StartOf(rest);
        if (valueText.Length == 0)
        {
            return No(Say("quick.no-value", Texts.List(points)));
        }

        var form = KindOf(points, kind);
        if (form is null)
        {
            return No(Say("quick.points", points.Count, kind.Length == 0 ? Say("quick.a-reading") : kind));
        }

        var sign = EntryKind.Of(form).MayBeNegative ? LengthSign.MayBeNegative : LengthSign.NeverNegative;
        return LengthText
            .Read(valueText, car.Units, sign)
            .Match(value => WithStart(ReadingOf(form, id, points, value), value, startText, car), refused => No(refused.Sentence));
    }

    private static Outcome WithStart(Reading reading, Length value, string? startText, CarFile car)
    {
        if (reading is Reading.Plan or Reading.Direct && value <= Length.Zero)
        {
            return No(Say("quick.zero"));
        }

        if (startText is null)
        {
            return new Outcome.Understood(reading);
        }

        return reading is not (Reading.Plan or Reading.Direct)
            ? No(Say("quick.no-start"))
            : LengthText
                .Read(startText, car.Units)
                .Match<Outcome>(
                    start =>
                        start >= value
                            ? No(Say("quick.start", start.AsTyped, value.AsTyped))
                            : new Outcome.Understood(reading with { StartAt = start }),
                    refused => No(refused.Sentence)
                );
    }

    private static string? KindOf(IReadOnlyList<string> points, string kind) =>
        (points.Count, kind) switch
        {
            (2, "" or "across") => "plan",
            (2, "direct") => "direct",
            (2, "rise") => "rise",
            (1, "" or "height") => "height",
            (1, "drop") => "drop",
            (3, "" or "string") => "offset",
            _ => null,
        };

    private static Reading ReadingOf(string kind, string id, IReadOnlyList<string> points, Length value) =>
        kind switch
        {
            "plan" => new Reading.Plan(id, points[0], points[1], value),
            "direct" => new Reading.Direct(id, points[0], points[1], value),
            "rise" => new Reading.Rise(id, points[0], points[1], value),
            "height" => new Reading.Height(id, points[0], value),
            "drop" => new Reading.Drop(id, points[0], value, null, null),
            _ => new Reading.Offset(id, points[0], points[1], points[2], value),
        };

    private static (string Value, string? Start) StartOf(string rest)
    {
        var match = Start().Match(rest);
        return match.Success ? (rest[..match.Index].Trim(), match.Groups["start"].Value.Trim()) : (rest, null);
    }

    private static Outcome No(string sentence) => new Outcome.NotUnderstood(sentence);

    [GeneratedRegex(@"\S+")]
    private static partial Regex Word();

    [GeneratedRegex(@"(?:\bfrom\b|\bstart(?:ed)?(?:\s+at)?\b|@)\s*(?<start>.+)$", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex Start();
}
