namespace Plumbmark.Engine.Lengths;

/// <summary>The units people write behind a number, and how each is kept.</summary>
internal static class LengthUnitWords
{
    private static readonly TypedUnit s_inch = new("in", LengthUnit.Inch, 1);
    private static readonly TypedUnit s_foot = new("ft", LengthUnit.Inch, 12);
    private static readonly TypedUnit s_thou = new("thou", LengthUnit.Inch, Rational.Of(0.001m));
    private static readonly TypedUnit s_millimetre = new("mm", LengthUnit.Millimetre, 1);
    private static readonly TypedUnit s_centimetre = new("cm", LengthUnit.Millimetre, 10);
    private static readonly TypedUnit s_metre = new("m", LengthUnit.Millimetre, 1000);

    private static readonly Dictionary<string, TypedUnit> s_words = new(StringComparer.OrdinalIgnoreCase)
    {
        ["in"] = s_inch,
        ["ins"] = s_inch,
        ["inch"] = s_inch,
        ["inches"] = s_inch,
        ["ft"] = s_foot,
        ["foot"] = s_foot,
        ["feet"] = s_foot,
        ["thou"] = s_thou,
        ["mm"] = s_millimetre,
        ["millimetre"] = s_millimetre,
        ["millimetres"] = s_millimetre,
        ["millimeter"] = s_millimetre,
        ["millimeters"] = s_millimetre,
        ["cm"] = s_centimetre,
        ["centimetre"] = s_centimetre,
        ["centimetres"] = s_centimetre,
        ["centimeter"] = s_centimetre,
        ["centimeters"] = s_centimetre,
        ["m"] = s_metre,
        ["metre"] = s_metre,
        ["metres"] = s_metre,
        ["meter"] = s_metre,
        ["meters"] = s_metre,
    };

    public static TypedUnit? ForWord(string word) => s_words.GetValueOrDefault(word);

    /// <summary>The unit of a mark such as " or ′, and how many characters it takes; two single marks are one double.</summary>
    public static (TypedUnit Unit, int Length)? ForMark(ReadOnlySpan<char> rest)
    {
        const string Doubles = "\"\u201C\u201D\u2033\u02BA"; // straight, the curly pair, prime, modifier letter
        const string Singles = "'\u2018\u2019\u2032\u02B9";
        if (Doubles.Contains(rest[0]))
        {
            return (s_inch, 1);
        }

        if (!Singles.Contains(rest[0]))
        {
            return null;
        }

        return rest.Length > 1 && Singles.Contains(rest[1]) ? (s_inch, 2) : (s_foot, 1);
    }

    public static TypedUnit ForBareNumber(LengthUnit unit) => unit == LengthUnit.Inch ? s_inch : s_millimetre;
}
