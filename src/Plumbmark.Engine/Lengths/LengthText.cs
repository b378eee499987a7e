namespace Plumbmark.Engine.Lengths;

/// <summary>
/// Reads lengths as people write them: <c>47 5/8</c>, <c>47⅝</c>, <c>33-17/32</c>, <c>5' 1 3/16"</c>, <c>5 ft 1.25 in</c>, <c>.5</c>,
/// <c>121,5 cm</c>, <c>1.215 m</c>, <c>12 thou</c>. What could mean two things is refused with a sentence, never guessed.
/// </summary>
/// <remarks>
/// <para>A number without a unit has the default unit; behind feet it is inches, whole feet and less than 12 inches.</para>
/// <para>Fractions are those a rule is divided in (halves to 128ths, 10ths, 100ths), less than one, of inches or feet; any Unicode
/// fraction character is taken as it stands. Metric units and thou take 1/2 alone: <c>47 5/8 mm</c> is surely a wrong unit.</para>
/// <para>A point is a decimal point. A comma is one before one or two digits, or behind a lone zero; <c>1,210</c> may be thousands.
/// Nothing stands between thousands.</para>
/// <para>Any Unicode space separates. Straight, curly and true primes mark feet and inches. Case does not matter.</para>
/// <para>The result does not depend on the machine's language. Every text has an outcome, within a millisecond.</para>
/// </remarks>
public static class LengthText
{
    /// <summary>No length needs more characters.</summary>
    public const int MostCharacters = 64;

    /// <summary>Reads a length, or says why not.</summary>
    /// <param name="text">As typed; null counts as nothing written.</param>
    /// <param name="defaultUnit">The unit of a number that has none.</param>
    /// <param name="sign">Whether a minus has a meaning here.</param>
    public static LengthOutcome Read(string? text, LengthUnit defaultUnit, LengthSign sign = LengthSign.NeverNegative)
    {
        text ??= "";
        var refusals = new LengthRefusals(text);
        if (text.Length > MostCharacters)
        {
            return refusals.TooLong(MostCharacters);
        }

        if (string.IsNullOrWhiteSpace(text))
        {
            return refusals.Nothing();
        }

        var (tokens, refused) = new LengthScanner(text, refusals).Scan();
        return refused ?? new LengthGrammar(text, tokens, refusals, defaultUnit, sign).Read();
    }
}
