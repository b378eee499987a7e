using System.Collections;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Car.Json;

/// <summary>Every fault found so far. Reading goes on after a fault, so that a person sees them all at once.</summary>
public sealed class Faults : IReadOnlyCollection<Fault>
{
    /// <summary>More than this many faults are counted but not kept: nobody reads the thousandth.</summary>
    public const int KeptAtMost = 200;

    private readonly List<Fault> _kept = [];
    private int _beyond;

    /// <summary>How many faults there are, kept or only counted.</summary>
    public int Count => _kept.Count + _beyond;

    /// <summary>Adds a fault at a part of the file.</summary>
    public void Add(JsonPart at, string sentence) => Add(new Fault(at.Path, at.Line, at.Column, sentence));

    /// <summary>Adds a fault that has its place already.</summary>
    public void Add(Fault fault)
    {
        if (_kept.Count < KeptAtMost)
        {
            _kept.Add(fault);
        }
        else
        {
            _beyond++;
        }
    }

    /// <summary>The kept faults in the order of the file, and one closing line when more were only counted.</summary>
    public IReadOnlyList<Fault> InOrder()
    {
        var ordered = _kept.OrderBy(f => f.Line).ThenBy(f => f.Column).ToList();
        if (_beyond > 0)
        {
            ordered.Add(new Fault("", 0, 0, Texts.Say("car.faults.there-are-more-faults-mend", _beyond)));
        }

        return ordered;
    }

    /// <inheritdoc/>
    public IEnumerator<Fault> GetEnumerator() => InOrder().GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
