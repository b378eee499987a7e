using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Bench;

/// <summary>What has been worked out so far of one part.</summary>
internal sealed class ReductionWork(IReadOnlyList<Tool> tools)
{
    private readonly List<DimensionValue> _dimensions = [];

    public IReadOnlyList<DimensionValue> Dimensions => _dimensions;

    public List<DimensionValue> SideDifferences { get; } = [];

    public List<string> Wanting { get; } = [];

    /// <summary>Mean diameter near the mouth of each bore, and its standard uncertainty in an unknown direction, metres.</summary>
    public Dictionary<string, (double Metres, double U)> Bores { get; } = new(StringComparer.Ordinal);

    public MeasuringDoubt DoubtOf(Measure measure) => MeasuringDoubt.Of(measure, tools);

    public void Add(DimensionValue value)
    {
        var index = _dimensions.FindIndex(d => d.Dimension == value.Dimension);
        if (index < 0)
        {
            _dimensions.Add(value);
        }
        else if (_dimensions[index].Quantity == value.Quantity)
        {
            _dimensions[index] = _dimensions[index].With(value);
        }
        else
        {
            Wanting.Add(Texts.Say("bench.reduction-work.was-measured-once-as-a", DimensionWords.Name(value.Dimension)));
        }
    }

    /// <summary>Mean of repeats. Their own scatter counts where it is larger than what the tool is trusted with.</summary>
    public static (double Mean, double U) Mean(IReadOnlyList<double> values, double sigma)
    {
        var mean = values.Average();
        var spread = values.Count < 2 ? 0 : Math.Sqrt(values.Sum(v => (v - mean) * (v - mean)) / (values.Count - 1));
        return (mean, Math.Max(sigma, spread) / Math.Sqrt(values.Count));
    }

    public static double[] Metres(IReadOnlyList<Length> lengths) => [.. lengths.Select(l => l.Metres)];
}
