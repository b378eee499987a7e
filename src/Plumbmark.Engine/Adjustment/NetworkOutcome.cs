using System.Diagnostics;
using Plumbmark.Engine.LeastSquares;

namespace Plumbmark.Engine.Adjustment;

/// <summary>What came of fitting a network. A rank defect is an answer, not a failure.</summary>
public abstract record NetworkOutcome
{
    private NetworkOutcome() { }

    /// <summary>Every touched coordinate is determined, up to the datum that <see cref="NetworkFit.Datum"/> reports.</summary>
    public sealed record Adjusted(NetworkFit Fit) : NetworkOutcome;

    /// <summary>Some points are not tied to the rest; the fit holds for all others.</summary>
    public sealed record Loose(NetworkFit Fit, ConfigurationDefect Defect) : NetworkOutcome;

    /// <summary>The iteration found no resting place; where it stopped and why is in the summary.</summary>
    public sealed record NotConverged(SolveSummary Summary) : NetworkOutcome;

    /// <summary>The network cannot be fitted as it stands; all faults at once.</summary>
    public sealed record Refused(IReadOnlyList<NetworkFault> Faults) : NetworkOutcome;

    /// <summary>The fit, complete or loose; null when there is none.</summary>
    public NetworkFit? FitOrNull =>
        this switch
        {
            Adjusted o => o.Fit,
            Loose o => o.Fit,
            _ => null,
        };

    /// <summary>Takes the one road that applies.</summary>
    public T Match<T>(Func<Adjusted, T> adjusted, Func<Loose, T> loose, Func<NotConverged, T> notConverged, Func<Refused, T> refused) =>
        this switch
        {
            Adjusted o => adjusted(o),
            Loose o => loose(o),
            NotConverged o => notConverged(o),
            Refused o => refused(o),
            _ => throw new UnreachableException(),
        };
}
