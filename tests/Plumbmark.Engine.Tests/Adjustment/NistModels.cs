namespace Plumbmark.Engine.Tests.Adjustment;

/// <summary>The 27 non-linear models of the NIST Statistical Reference Datasets, each with its derivatives by hand.</summary>
internal static class NistModels
{
    /// <summary>The model's value at x for the parameters b, whose derivatives fill d.</summary>
    public delegate double Model(ReadOnlySpan<double> b, double[] x, Span<double> d);

    public static IReadOnlyDictionary<string, Model> ByName { get; } =
        new Dictionary<string, Model>(StringComparer.Ordinal)
        {
            ["Bennett5"] = Bennett5,
            ["BoxBOD"] = Saturation,
            ["Chwirut1"] = Chwirut,
            ["Chwirut2"] = Chwirut,
            ["DanWood"] = DanWood,
            ["ENSO"] = Enso,
            ["Eckerle4"] = Eckerle4,
            ["Gauss1"] = Gauss,
            ["Gauss2"] = Gauss,
            ["Gauss3"] = Gauss,
            ["Hahn1"] = (b, x, d) => Rational(b, x[0], d, above: 4),
            ["Kirby2"] = (b, x, d) => Rational(b, x[0], d, above: 3),
            ["Lanczos1"] = Lanczos,
            ["Lanczos2"] = Lanczos,
            ["Lanczos3"] = Lanczos,
            ["MGH09"] = Mgh09,
            ["MGH10"] = Mgh10,
            ["MGH17"] = Mgh17,
            ["Misra1a"] = Saturation,
            ["Misra1b"] = Misra1b,
            ["Misra1c"] = Misra1c,
            ["Misra1d"] = Misra1d,
            ["Nelson"] = Nelson,
            ["Rat42"] = Rat42,
            ["Rat43"] = Rat43,
            ["Roszman1"] = Roszman1,
            ["Thurber"] = (b, x, d) => Rational(b, x[0], d, above: 4),
        };

    // b1 (b2 + x)^(−1/b3)
    private static double Bennett5(ReadOnlySpan<double> b, double[] x, Span<double> d)
    {
        var sum = b[1] + x[0];
        d[0] = Math.Pow(sum, -1 / b[2]);
        var y = b[0] * d[0];
        d[1] = -y / (b[2] * sum);
        d[2] = y * Math.Log(sum) / (b[2] * b[2]);
        return y;
    }

    // b1 (1 − exp(−b2 x))
    private static double Saturation(ReadOnlySpan<double> b, double[] x, Span<double> d)
    {
        var e = Math.Exp(-b[1] * x[0]);
        d[0] = 1 - e;
        d[1] = b[0] * x[0] * e;
        return b[0] * d[0];
    }

    // exp(−b1 x) / (b2 + b3 x)
    private static double Chwirut(ReadOnlySpan<double> b, double[] x, Span<double> d)
    {
        var below = b[1] + b[2] * x[0];
        var y = Math.Exp(-b[0] * x[0]) / below;
        d[0] = -x[0] * y;
        d[1] = -y / below;
        d[2] = x[0] * d[1];
        return y;
    }

    // b1 x^b2
    private static double DanWood(ReadOnlySpan<double> b, double[] x, Span<double> d)
    {
        d[0] = Math.Pow(x[0], b[1]);
        d[1] = b[0] * d[0] * Math.Log(x[0]);
        return b[0] * d[0];
    }

    // b1 + a wave of period 12 (b2, b3), one of period b4 (b5, b6) and one of period b7 (b8, b9)
    private static double Enso(ReadOnlySpan<double> b, double[] x, Span<double> d)
    {
        d[0] = 1;
        (d[2], d[1]) = Math.SinCos(Math.Tau * x[0] / 12);
        return b[0] + b[1] * d[1] + b[2] * d[2] + Wave(b[3..6], x[0], d[3..6]) + Wave(b[6..9], x[0], d[6..9]);

        static double Wave(ReadOnlySpan<double> b, double x, Span<double> d)
        {
            (d[2], d[1]) = Math.SinCos(Math.Tau * x / b[0]);
            d[0] = (b[1] * d[2] - b[2] * d[1]) * Math.Tau * x / (b[0] * b[0]);
            return b[1] * d[1] + b[2] * d[2];
        }
    }

    // b1/b2 exp(−½ ((x − b3)/b2)²)
    private static double Eckerle4(ReadOnlySpan<double> b, double[] x, Span<double> d)
    {
        var z = (x[0] - b[2]) / b[1];
        d[0] = Math.Exp(-z * z / 2) / b[1];
        var y = b[0] * d[0];
        d[1] = y * (z * z - 1) / b[1];
        d[2] = y * z / b[1];
        return y;
    }

    // b1 exp(−b2 x) + b3 exp(−((x − b4)/b5)²) + b6 exp(−((x − b7)/b8)²)
    private static double Gauss(ReadOnlySpan<double> b, double[] x, Span<double> d)
    {
        d[0] = Math.Exp(-b[1] * x[0]);
        d[1] = -x[0] * b[0] * d[0];
        return b[0] * d[0] + Hill(b[2..5], x[0], d[2..5]) + Hill(b[5..8], x[0], d[5..8]);

        static double Hill(ReadOnlySpan<double> b, double x, Span<double> d)
        {
            var z = (x - b[1]) / b[2];
            d[0] = Math.Exp(-z * z);
            var y = b[0] * d[0];
            d[1] = 2 * y * z / b[2];
            d[2] = 2 * y * z * z / b[2];
            return y;
        }
    }

    // (b1 + b2 x + b3 x² + …) / (1 + b(k+1) x + b(k+2) x² + …), k parameters above the line
    private static double Rational(ReadOnlySpan<double> b, double x, Span<double> d, int above)
    {
        var (top, bottom) = (0.0, 1.0);
        for (var (i, power) = (0, 1.0); i < above; i++, power *= x)
        {
            top += b[i] * power;
            d[i] = power;
            if (i > 0)
            {
                bottom += b[above + i - 1] * power;
            }
        }

        var y = top / bottom;
        for (var i = above - 1; i >= 0; i--)
        {
            if (i > 0)
            {
                d[above + i - 1] = -y * d[i] / bottom;
            }

            d[i] /= bottom;
        }

        return y;
    }

    // Σ b1 exp(−b2 x), three times
    private static double Lanczos(ReadOnlySpan<double> b, double[] x, Span<double> d)
    {
        var y = 0.0;
        for (var i = 0; i < 6; i += 2)
        {
            d[i] = Math.Exp(-b[i + 1] * x[0]);
            d[i + 1] = -x[0] * b[i] * d[i];
            y += b[i] * d[i];
        }

        return y;
    }

    // b1 (x² + x b2) / (x² + x b3 + b4)
    private static double Mgh09(ReadOnlySpan<double> b, double[] x, Span<double> d)
    {
        var below = x[0] * x[0] + x[0] * b[2] + b[3];
        d[0] = (x[0] * x[0] + x[0] * b[1]) / below;
        var y = b[0] * d[0];
        d[1] = b[0] * x[0] / below;
        d[2] = -y * x[0] / below;
        d[3] = -y / below;
        return y;
    }

    // b1 exp(b2 / (x + b3))
    private static double Mgh10(ReadOnlySpan<double> b, double[] x, Span<double> d)
    {
        var sum = x[0] + b[2];
        d[0] = Math.Exp(b[1] / sum);
        var y = b[0] * d[0];
        d[1] = y / sum;
        d[2] = -y * b[1] / (sum * sum);
        return y;
    }

    // b1 + b2 exp(−x b4) + b3 exp(−x b5)
    private static double Mgh17(ReadOnlySpan<double> b, double[] x, Span<double> d)
    {
        d[0] = 1;
        d[1] = Math.Exp(-x[0] * b[3]);
        d[2] = Math.Exp(-x[0] * b[4]);
        d[3] = -x[0] * b[1] * d[1];
        d[4] = -x[0] * b[2] * d[2];
        return b[0] + b[1] * d[1] + b[2] * d[2];
    }

    // b1 (1 − (1 + b2 x/2)^−2)
    private static double Misra1b(ReadOnlySpan<double> b, double[] x, Span<double> d)
    {
        var t = 1 + b[1] * x[0] / 2;
        d[0] = 1 - 1 / (t * t);
        d[1] = b[0] * x[0] / (t * t * t);
        return b[0] * d[0];
    }

    // b1 (1 − (1 + 2 b2 x)^−½)
    private static double Misra1c(ReadOnlySpan<double> b, double[] x, Span<double> d)
    {
        var t = 1 + 2 * b[1] * x[0];
        d[0] = 1 - 1 / Math.Sqrt(t);
        d[1] = b[0] * x[0] / (t * Math.Sqrt(t));
        return b[0] * d[0];
    }

    // b1 b2 x / (1 + b2 x)
    private static double Misra1d(ReadOnlySpan<double> b, double[] x, Span<double> d)
    {
        var t = 1 + b[1] * x[0];
        d[0] = b[1] * x[0] / t;
        d[1] = b[0] * x[0] / (t * t);
        return b[0] * d[0];
    }

    // log y = b1 − b2 x1 exp(−b3 x2)
    private static double Nelson(ReadOnlySpan<double> b, double[] x, Span<double> d)
    {
        d[0] = 1;
        d[1] = -x[0] * Math.Exp(-b[2] * x[1]);
        d[2] = -b[1] * x[1] * d[1];
        return b[0] + b[1] * d[1];
    }

    // b1 / (1 + exp(b2 − b3 x))
    private static double Rat42(ReadOnlySpan<double> b, double[] x, Span<double> d)
    {
        var e = Math.Exp(b[1] - b[2] * x[0]);
        d[0] = 1 / (1 + e);
        d[1] = -b[0] * e * d[0] * d[0];
        d[2] = -x[0] * d[1];
        return b[0] * d[0];
    }

    // b1 / (1 + exp(b2 − b3 x))^(1/b4)
    private static double Rat43(ReadOnlySpan<double> b, double[] x, Span<double> d)
    {
        var e = Math.Exp(b[1] - b[2] * x[0]);
        d[0] = Math.Pow(1 + e, -1 / b[3]);
        var y = b[0] * d[0];
        d[1] = -y * e / ((1 + e) * b[3]);
        d[2] = -x[0] * d[1];
        d[3] = y * Math.Log(1 + e) / (b[3] * b[3]);
        return y;
    }

    // b1 − b2 x − arctan(b3/(x − b4))/π
    private static double Roszman1(ReadOnlySpan<double> b, double[] x, Span<double> d)
    {
        var away = x[0] - b[3];
        var square = away * away + b[2] * b[2];
        d[0] = 1;
        d[1] = -x[0];
        d[2] = -away / (square * Math.PI);
        d[3] = -b[2] / (square * Math.PI);
        return b[0] - b[1] * x[0] - Math.Atan(b[2] / away) / Math.PI;
    }
}
