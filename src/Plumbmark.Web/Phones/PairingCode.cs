using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace Plumbmark.Web.Phones;

/// <summary>The short code on the laptop's screen that lets one phone in. At most one is good at a time.</summary>
/// <remarks>
/// Six digits, five tries for all strangers together, ten minutes, once. Only a person at the laptop makes another: a stranger's chance is five in a
/// million for each time somebody presses the button, however many machines he tries from.
/// </remarks>
internal sealed class PairingCode(TimeProvider clock)
{
    public const int Tries = 5;
    private const int Digits = 6;
    private readonly Lock _lock = new();
    private string? _code;
    private DateTimeOffset _until;
    private int _triesLeft;

    public static TimeSpan Lifetime { get; } = TimeSpan.FromMinutes(10);

    /// <summary>What became of a try.</summary>
    public enum Outcome
    {
        /// <summary>The phone is let in; the code is used up.</summary>
        Right,

        /// <summary>Not the code; it is still good.</summary>
        Wrong,

        /// <summary>No code is good now: none was made, it is too old, used, or tried too often.</summary>
        NoneGood,
    }

    /// <summary>Why the last code is gone, when strangers used up its tries.</summary>
    public bool WasTriedTooOften { get; private set; }

    /// <summary>Makes a new code; the one before is good no longer.</summary>
    public string MakeNew()
    {
        lock (_lock)
        {
            _code = RandomNumberGenerator.GetInt32(1_000_000).ToString(CultureInfo.InvariantCulture).PadLeft(Digits, '0');
            _until = clock.GetUtcNow() + Lifetime;
            _triesLeft = Tries;
            WasTriedTooOften = false;
            return _code;
        }
    }

    /// <summary>The code that is good now, with the minutes left; null when there is none.</summary>
    public (string Code, int Minutes)? Good()
    {
        lock (_lock)
        {
            var left = _until - clock.GetUtcNow();
            return _code is null || left <= TimeSpan.Zero ? null : (_code, (int)Math.Ceiling(left.TotalMinutes));
        }
    }

    /// <summary>Tries what was typed on a phone.</summary>
    public Outcome Try(string typed)
    {
        lock (_lock)
        {
            if (_code is null || clock.GetUtcNow() >= _until)
            {
                _code = null;
                return Outcome.NoneGood;
            }

            // Hashes, so that the comparison takes the same time whatever and however much was typed.
            var isRight = CryptographicOperations.FixedTimeEquals(
                SHA256.HashData(Encoding.UTF8.GetBytes(_code)),
                SHA256.HashData(Encoding.UTF8.GetBytes(typed.Replace(" ", "", StringComparison.Ordinal)))
            );
            if (isRight)
            {
                _code = null;
                return Outcome.Right;
            }

            if (--_triesLeft > 0)
            {
                return Outcome.Wrong;
            }

            _code = null;
            WasTriedTooOften = true;
            return Outcome.NoneGood;
        }
    }
}
