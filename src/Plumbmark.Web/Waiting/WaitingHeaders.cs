namespace Plumbmark.Web.Waiting;

/// <summary>
/// How <c>waiting.js</c> and the server speak about a form that was kept on the phone first. Only the answer 204 means that the form is kept: a
/// page of a hotel's network, a proxy or a redirect can never be taken for it.
/// </summary>
internal static class WaitingHeaders
{
    /// <summary>In a request: the form waited on the phone; the value is the mark of the car it was filled in for.</summary>
    public const string Mark = "Plumbmark-Waiting";

    /// <summary>In the answer: the page that would have been shown.</summary>
    public const string Show = "Plumbmark-Show";
}
