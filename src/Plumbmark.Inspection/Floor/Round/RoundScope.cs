namespace Plumbmark.Inspection.Floor.Round;

/// <summary>What a measuring round asks for. The meaning of <c>default</c> is the usual readings that are not taken yet.</summary>
public enum RoundScope
{
    /// <summary>The usual readings that are not taken yet.</summary>
    Usual,

    /// <summary>The readings that are doubted, once more, and then those of the plan: what is worth most.</summary>
    Planned,

    /// <summary>Every usual reading, taken or not: to measure a frame again.</summary>
    All,
}
