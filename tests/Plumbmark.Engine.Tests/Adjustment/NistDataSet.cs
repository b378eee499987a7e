using System.Globalization;
using System.Text.RegularExpressions;
using Plumbmark.Testing;

namespace Plumbmark.Engine.Tests.Adjustment;

/// <summary>A regression data set of the NIST Statistical Reference Datasets with its certified values (reference/nist).</summary>
internal sealed partial class NistDataSet
{
    private NistDataSet(string name, double[][] rows, Parameter[] parameters, double residualDeviation)
    {
        (Name, Parameters, ResidualDeviation) = (name, parameters, residualDeviation);
        Observed = [.. rows.Select(row => row[0])];
        Places = [.. rows.Select(row => row[1..])];
    }

    /// <summary>Certified values of one parameter; linear sets have no starts.</summary>
    public sealed record Parameter(double Start1, double Start2, double Estimate, double Deviation);

    public string Name { get; }

    public double[] Observed { get; }

    public double[][] Places { get; }

    public Parameter[] Parameters { get; }

    public double ResidualDeviation { get; }

    public static NistDataSet Read(string name)
    {
        var lines = File.ReadAllLines(Repository.PathTo("reference", "nist", name + ".dat"));
        var head = Array.FindLastIndex(lines, line => line.StartsWith("Data:", StringComparison.Ordinal));
        var rows = lines[(head + 1)..].Select(Numbers).Where(row => row.Length > 0).ToArray();
        var parameters = lines[..head].Select(ParameterIn).OfType<Parameter>().ToArray();
        var deviation = lines[..head].Select(line => Numbers(AfterWords().Match(line).Groups["number"].Value)).First(n => n.Length > 0)[0];
        return new NistDataSet(name, rows, parameters, deviation);
    }

    /// <summary>How many leading digits of the certified values the computed ones share: the worst of them (LRE, log relative error).</summary>
    public static double AgreeingDigits(IEnumerable<double> certified, IEnumerable<double> computed) =>
        certified.Zip(computed, (c, x) => Math.Clamp(-Math.Log10(Math.Abs(x - c) / (c == 0 ? 1 : Math.Abs(c))), 0, 15)).Min();

    // "  b1 =   500         250           2.3894212918E+02  2.7070075241E+00" or "B0        -0.262323073774029     0.232818234301152"
    private static Parameter? ParameterIn(string line)
    {
        var match = NamedParameter().Match(line);
        return (match.Success, Numbers(match.Groups["numbers"].Value)) switch
        {
            (true, [var start1, var start2, var estimate, var deviation]) => new Parameter(start1, start2, estimate, deviation),
            (true, [var estimate, var deviation]) => new Parameter(double.NaN, double.NaN, estimate, deviation),
            _ => null,
        };
    }

    private static double[] Numbers(string text) =>
        [
            .. text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)
                .Select(word => double.TryParse(word, CultureInfo.InvariantCulture, out var number) ? number : double.NaN)
                .TakeWhile(number => !double.IsNaN(number)),
        ];

    [GeneratedRegex(@"^\s*[bB]\d+\s*=?\s+(?<numbers>.*)$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex NamedParameter();

    [GeneratedRegex(@"Standard Deviation:?\s+(?<number>[\d.E+-]+)\s*$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex AfterWords();
}
