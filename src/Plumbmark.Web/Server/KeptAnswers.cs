using Microsoft.Extensions.Logging;

namespace Plumbmark.Web.Server;

/// <summary>Answers that take their time, each worked out once for whoever asks the same; the oldest make room.</summary>
/// <param name="what">What is worked out, for the log: "the floor".</param>
/// <param name="log">Is told once of each that cannot be worked out.</param>
internal sealed partial class KeptAnswers<TAsked, TAnswer>(string what, ILogger log)
    where TAsked : notnull
{
    private const int KeptAtMost = 32;
    private readonly Lock _lock = new();
    private readonly Dictionary<TAsked, Lazy<TAnswer>> _kept = [];
    private readonly Queue<TAsked> _byAge = [];

    /// <summary>The answer to what is asked.</summary>
    /// <exception cref="NoAnswerException">Working it out failed: a fault of ours, told to the log the first time.</exception>
    public TAnswer For(TAsked asked, Func<TAnswer> workOut)
    {
        Lazy<TAnswer>? answer;
        lock (_lock)
        {
            if (!_kept.TryGetValue(asked, out answer))
            {
                if (_kept.Count >= KeptAtMost)
                {
                    _kept.Remove(_byAge.Dequeue());
                }

                _kept[asked] = answer = new Lazy<TAnswer>(() => Guarded(asked, workOut));
                _byAge.Enqueue(asked);
            }
        }

        // Outside the lock: two phones on the same car wait for one calculation, those on others do not.
        return answer.Value;
    }

    private TAnswer Guarded(TAsked asked, Func<TAnswer> workOut)
    {
        try
        {
            return workOut();
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            LogFailure(what, asked, e);
            throw new NoAnswerException(e);
        }
    }

    [LoggerMessage(LogLevel.Error, "What is said of {What} could not be worked out ({Asked}).")]
    private partial void LogFailure(string what, TAsked asked, Exception exception);
}
