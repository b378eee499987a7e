using System.Diagnostics;

namespace Plumbmark.Engine.Adjustment;

/// <summary>A reading not yet taken that would tie a floating point.</summary>
public abstract record Tie
{
    private Tie() { }

    /// <summary>A plan length between two marks.</summary>
    public sealed record Plan(string From, string To) : Tie;

    /// <summary>A direct length between two points.</summary>
    public sealed record Direct(string From, string To) : Tie;

    /// <summary>A height of the point above the reference.</summary>
    public sealed record Height(string Point) : Tie;

    /// <summary>Takes the one road that applies.</summary>
    public T Match<T>(Func<Plan, T> plan, Func<Direct, T> direct, Func<Height, T> height) =>
        this switch
        {
            Plan t => plan(t),
            Direct t => direct(t),
            Height t => height(t),
            _ => throw new UnreachableException(),
        };
}
