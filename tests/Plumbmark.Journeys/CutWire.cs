using System.Net;
using System.Net.Sockets;

namespace Plumbmark.Journeys;

/// <summary>A wire between a phone and the app that can be cut at any byte, in either direction, and mended.</summary>
internal sealed class CutWire : IAsyncDisposable
{
    private readonly TcpListener _listener = new(IPAddress.Loopback, 0);
    private readonly Func<int> _appPort;
    private readonly CancellationTokenSource _end = new();
    private readonly Lock _lock = new();
    private readonly HashSet<Socket> _ends = [];
    private readonly Task _accepting;
    private long _left = long.MaxValue;
    private bool _isCut;

    public CutWire(Func<int> appPort)
    {
        _appPort = appPort;
        _listener.Start();
        _accepting = Accept();
    }

    /// <summary>Where the phone reaches the app.</summary>
    public string Address => $"http://127.0.0.1:{((IPEndPoint)_listener.LocalEndpoint).Port}";

    /// <summary>What was passing when the wire was cut last: nothing, a request, or an answer.</summary>
    public string CutDuring { get; private set; } = "";

    /// <summary>How many requests to keep a reading have begun to pass.</summary>
    public int Posts { get; private set; }

    /// <summary>Cuts the wire after so many more bytes, whichever way they go.</summary>
    public void CutAfter(long bytes)
    {
        lock (_lock)
        {
            _left = bytes;
            CutDuring = "nothing";
        }
    }

    /// <summary>Cuts it now, when it is not cut yet.</summary>
    public void Cut()
    {
        lock (_lock)
        {
            _isCut = true;
        }

        SeverAll();
    }

    /// <summary>Joins it again.</summary>
    public void Mend()
    {
        lock (_lock)
        {
            _isCut = false;
            _left = long.MaxValue;
        }
    }

    public async ValueTask DisposeAsync()
    {
        Cut();
        await _end.CancelAsync();
        _listener.Stop();
        await _accepting;
        _end.Dispose();
        _listener.Dispose();
    }

    private void SeverAll()
    {
        lock (_lock)
        {
            foreach (var socket in _ends)
            {
                Sever(socket);
            }

            _ends.Clear();
        }
    }

    private static void Sever(Socket socket)
    {
        try
        {
            socket.LingerState = new LingerOption(true, 0); // a reset, as from a cable pulled out: what was not delivered is gone
            socket.Close();
        }
        catch (ObjectDisposedException) { }
        catch (SocketException) { }
    }

    private async Task Accept()
    {
        try
        {
            while (true)
            {
                _ = Carry(await _listener.AcceptSocketAsync(_end.Token));
            }
        }
        catch (OperationCanceledException) { }
        catch (SocketException) { }
        catch (InvalidOperationException) { } // not listening any more, or gone
    }

    private async Task Carry(Socket phone)
    {
        var app = new Socket(AddressFamily.InterNetwork, SocketType.Stream, ProtocolType.Tcp);
        try
        {
            if (!Joined(phone, app))
            {
                return;
            }

            await app.ConnectAsync(IPAddress.Loopback, _appPort(), _end.Token);
            await Task.WhenAny(Pass(phone, app, "a request"), Pass(app, phone, "an answer"));
        }
        catch (SocketException) { }
        catch (ObjectDisposedException) { }
        catch (OperationCanceledException) { }
        finally
        {
            Sever(phone);
            Sever(app);
            lock (_lock)
            {
                _ends.Remove(phone);
                _ends.Remove(app);
            }
        }
    }

    private bool Joined(Socket phone, Socket app)
    {
        lock (_lock)
        {
            if (_isCut)
            {
                return false;
            }

            _ends.Add(phone);
            _ends.Add(app);
            return true;
        }
    }

    private async Task Pass(Socket from, Socket to, string what)
    {
        var buffer = new byte[16 * 1024];
        while (await from.ReceiveAsync(buffer, _end.Token) is > 0 and var read)
        {
            if (buffer.AsSpan(0, read).StartsWith("POST /cars/"u8))
            {
                Posts++;
            }

            var passes = Allowed(read, what);
            await to.SendAsync(buffer.AsMemory(0, passes), _end.Token);
            if (passes < read)
            {
                await Task.Delay(2); // what has passed arrives before the reset does
                SeverAll(); // it may have been mended meanwhile
                return;
            }
        }
    }

    private int Allowed(int bytes, string what)
    {
        lock (_lock)
        {
            if (_left == long.MaxValue)
            {
                return bytes;
            }

            var passes = (int)Math.Min(bytes, _left);
            _left -= passes;
            if (passes < bytes)
            {
                CutDuring = what;
                _isCut = true;
            }

            return passes;
        }
    }
}
