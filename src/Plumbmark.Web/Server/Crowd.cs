using Microsoft.AspNetCore.Connections;

namespace Plumbmark.Web.Server;

/// <summary>Keeps the number of connections that come in at an address below a limit; one too many is closed at once.</summary>
internal sealed class Crowd(int most)
{
    private int _open;

    public ConnectionDelegate Admit(ConnectionDelegate next) =>
        async connection =>
        {
            try
            {
                if (Interlocked.Increment(ref _open) <= most)
                {
                    await next(connection);
                }
                else
                {
                    connection.Abort();
                }
            }
            finally
            {
                Interlocked.Decrement(ref _open);
            }
        };
}
