using System.Globalization;
using Plumbmark.Inspection.Floor.Round;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Sheet;

/// <summary>
/// The number at the head of a printed form, such as <c>57P</c>: the place in the journal where it was made, and what it asks for. The screen finds the same
/// lines by it, whatever was entered since. <c>default</c> is no number.
/// </summary>
/// <param name="Sequence">The last entry that the car had.</param>
/// <param name="Scope">What the form asks for.</param>
public readonly record struct FormNumber(long Sequence, RoundScope Scope)
{
    /// <summary>What a form may ask for: letter, word in addresses, and words to choose by.</summary>
    public static IReadOnlyList<(char Letter, RoundScope Scope, string Word, string Text)> Scopes { get; } =
    [
        ('P', RoundScope.Planned, "planned", Say("sheet.form-number.the-plan-doubted-ones")),
        ('U', RoundScope.Usual, "usual", Say("sheet.form-number.the-usual-readings-not")),
        ('A', RoundScope.All, "all", Say("sheet.form-number.all-the-usual-readings")),
    ];

    /// <summary>The scope of that word; the plan when there is none.</summary>
    public static RoundScope ScopeOf(string word) => Scopes.FirstOrDefault(s => s.Word == word, Scopes[0]).Scope;

    /// <summary>The number as a person types it, small letters and blanks allowed; null when it is none of a form of this car.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="last">The car's last entry: a form cannot be of a later one.</param>
    public static FormNumber? Read(string text, long last)
    {
        var bare = text.Trim().ToUpperInvariant();
        if (bare.Length < 2)
        {
            return null;
        }

        var scope = Scopes.Where(s => s.Letter == bare[^1]).Select(s => (RoundScope?)s.Scope).FirstOrDefault();
        var isNumber = long.TryParse(
            bare.AsSpan(0, bare.Length - 1).Trim(),
            NumberStyles.None,
            CultureInfo.InvariantCulture,
            out var sequence
        );
        return isNumber && sequence >= 1 && sequence <= last && scope is { } known ? new FormNumber(sequence, known) : null;
    }

    /// <inheritdoc/>
    public override string ToString()
    {
        var scope = Scope;
        return $"{Sequence.ToString(CultureInfo.InvariantCulture)}{Scopes.First(s => s.Scope == scope).Letter}";
    }
}
