using System.Diagnostics;
using CsCheck;
using Plumbmark.Engine.Lengths;

namespace Plumbmark.Engine.Tests.Lengths;

public class LengthLaws
{
    private static readonly Gen<LengthUnit> s_units = Gen.OneOf(LengthUnit.Inch, LengthUnit.Millimetre);

    private static readonly Gen<Length> s_fractions = Gen.Select(
        Gen.Int[-20_000, 20_000],
        Gen.OneOf(1, 2, 4, 8, 16, 32, 64, 128, 10, 100, 3, 5, 6),
        (above, below) => Length.FromFraction(Rational.Of(above, below), LengthUnit.Inch)
    );

    private static readonly Gen<Length> s_decimals = Gen.Select(
        Gen.Int[-5_000_000, 5_000_000],
        Gen.Int[0, 4],
        s_units,
        (digits, decimals, unit) => Length.FromNumber(new decimal(Math.Abs(digits), 0, 0, digits < 0, (byte)decimals), unit)
    );

    private static readonly Gen<Length> s_lengths = Gen.OneOf(s_fractions, s_decimals);

    [Fact]
    public void ExactText_ReadsBackAsTheSameLength() =>
        s_lengths.Sample(length => Assert.Equal(length, Read(length.ToString())), iter: 5_000);

    [Fact]
    public void ShownText_ReadsBackAsTheRoundedLength() =>
        Gen.Select(s_lengths, Gen.OneOf("1/8", "1/16", "1/32", "1/64", "0.01", "0.001", "1/10", "1 mm", "0.5 mm", "0.02 mm", "⅓"), Gen.Bool)
            .Sample(
                (length, division, feet) =>
                {
                    var display = new LengthDisplay(Read(division), feet);
                    var rounded = display.Rounded(length);
                    Assert.Equal(rounded, Read(display.Text(length)));
                    Assert.True(((rounded - length).Abs() * 2).CompareTo(display.Division) <= 0, "off by more than half a division");
                },
                iter: 5_000
            );

    [Fact]
    public void AnotherUnitAndBack_IsTheSame() =>
        Gen.Select(s_lengths, s_units)
            .Sample((length, unit) => length.In(unit) == length && length.In(unit).In(length.Unit).Value == length.Value);

    [Fact]
    public void Order_AgreesWithDifferenceAndEquality() =>
        Gen.Select(s_lengths, s_lengths)
            .Sample(
                (a, b) =>
                {
                    Assert.Equal((a - b).Value.Sign, a.CompareTo(b));
                    Assert.Equal(a.CompareTo(b) == 0, a == b);
                    Assert.Equal(a.CompareTo(b), -b.CompareTo(a));
                    Assert.Equal(a, a - b + b);
                    Assert.True(a != b || a.GetHashCode() == b.GetHashCode());
                }
            );

    [Fact]
    public void Doubles_AreCorrectlyRounded() =>
        Gen.Select(Gen.Long, Gen.Long[1, long.MaxValue], Gen.Int[-200, 200])
            .Sample(
                (above, below, power) =>
                {
                    var value =
                        Rational.Of(above, below)
                        * (
                            power >= 0
                                ? Rational.Of(System.Numerics.BigInteger.Pow(2, power), 1)
                                : Rational.Of(1, System.Numerics.BigInteger.Pow(2, -power))
                        );
                    var rounded = value.ToDouble();
                    var error = Distance(value, rounded);
                    Assert.True(
                        error <= Distance(value, Math.BitIncrement(rounded)) && error <= Distance(value, Math.BitDecrement(rounded))
                    );
                }
            );

    [Fact]
    public void Doubles_OfDecimals_AgreeWithTheFrameworksParser() =>
        Gen.Decimal.Sample(d => Rational.Of(d).ToDouble() == double.Parse(d.ToString(System.Globalization.CultureInfo.InvariantCulture)));

    [Fact]
    public void AnyText_HasAnOutcome() =>
        Gen.OneOf(
                Gen.String,
                Gen.String[Gen.Char["0123456789 /.,-+'\"⅝½⁄−′″infcmteh\u00A0eE٧\uD83D\uDD27"], 0, 70],
                Gen.Select(Gen.OneOf(s_valid), Gen.Int[0, 40], Gen.Char, Gen.Int[0, 2], Mutated)
            )
            .Sample(
                text =>
                {
                    var outcome = LengthText.Read(text, LengthUnit.Inch, LengthSign.MayBeNegative);
                    var isSound = outcome.Match(
                        length => length.AsTyped == text,
                        refused => refused.Position >= 0 && refused.Position <= text.Length && refused.Sentence.EndsWith('.')
                    );
                    Assert.True(isSound, text);
                },
                iter: 20_000
            );

    [Fact]
    public void AnyText_TakesLessThanAMillisecond()
    {
        string[] slow =
        [
            new('7', 64),
            "1/" + new string('0', 62),
            new('/', 64),
            new('.', 64),
            "0." + new string('9', 62),
            new('\'', 64),
            .. s_valid,
        ];
        foreach (var text in slow)
        {
            LengthText.Read(text, LengthUnit.Inch); // compiled before it is timed
            var best = Enumerable.Range(0, 20).Min(_ => Timed(text)); // the least of 20: other work on the machine only adds
            Assert.True(best < TimeSpan.FromMilliseconds(1), $"{text}: {best}");
        }

        static TimeSpan Timed(string text)
        {
            var start = Stopwatch.GetTimestamp();
            LengthText.Read(text, LengthUnit.Inch);
            return Stopwatch.GetElapsedTime(start);
        }
    }

    private static readonly string[] s_valid =
    [
        "47 5/8",
        "47-5/8\"",
        "47⅝",
        "5' 1 3/16\"",
        "5 ft 1.25 in",
        "121,5 cm",
        "1.215 m",
        "-6 15/16 in.",
        "12 thou",
    ];

    private static string Mutated(string text, int place, char c, int how)
    {
        var at = place % text.Length;
        return how switch
        {
            0 => text.Insert(at, $"{c}"),
            1 => text.Remove(at, 1),
            _ => text[..at] + c + text[(at + 1)..],
        };
    }

    private static Rational Distance(Rational value, double d)
    {
        var difference = Rational.OfExactly(d) - value;
        return difference.Sign < 0 ? -difference : difference;
    }

    private static Length Read(string text) => LengthTextTests.Understood(text, LengthUnit.Inch, LengthSign.MayBeNegative);
}
