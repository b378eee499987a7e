using System.Net;

namespace Plumbmark.Web.Server;

/// <summary>Where the app is open, and where it keeps what is only its own.</summary>
/// <param name="Port">The port; 0 for any free one, on this machine only.</param>
/// <param name="OwnFolder">A folder that only its owner can read: keys of forms, the list of phones. Null keeps neither after the end.</param>
public sealed record WebPlace(int Port, string? OwnFolder)
{
    /// <summary>Addresses of this machine on the home network at which phones are let in; none by default.</summary>
    public IReadOnlyList<IPAddress> Lan { get; init; } = [];

    /// <summary>How long the head of a request may take.</summary>
    public TimeSpan HeadPatience { get; init; } = TimeSpan.FromSeconds(10);

    /// <summary>How long a body may trickle slower than any real connection before it is dropped.</summary>
    public TimeSpan BodyPatience { get; init; } = TimeSpan.FromSeconds(5);
}
