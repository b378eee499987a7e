namespace Plumbmark.Engine.Adjustment;

/// <summary>Turns a checked <see cref="Network"/> into a <see cref="CompiledNetwork"/>.</summary>
internal sealed class NetworkCompiler
{
    private readonly Network _network;
    private readonly bool _isDesign;
    private readonly Dictionary<string, int> _pointIndex = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> _toolIndex = new(StringComparer.Ordinal);
    private readonly PointSlot[] _points;
    private readonly ToolSlot[] _tools;
    private readonly double[] _origin = [0, 0, 0];
    private readonly List<Row> _rows = [];
    private int _unknowns;
    private int _firstTool;

    private NetworkCompiler(Network network, bool isDesign)
    {
        (_network, _isDesign) = (network, isDesign);
        _points = [.. network.Points.Select(p => new PointSlot { Id = p.Id })];
        _tools = [.. network.Tools.Select(t => new ToolSlot(t))];
        for (var i = 0; i < _points.Length; i++)
        {
            _pointIndex[_points[i].Id] = i;
        }

        for (var i = 0; i < _tools.Length; i++)
        {
            _toolIndex[_tools[i].Source.Id] = i;
        }
    }

    /// <summary>Compiles a network in which <see cref="NetworkCheck"/> found no fault.</summary>
    public static CompiledNetwork Compile(Network network) => new NetworkCompiler(network, isDesign: false).Compile();

    /// <summary>
    /// Compiles a network that readings not yet known will be added to: every drop error and every tool is an unknown, used or not.
    /// </summary>
    public static CompiledNetwork CompileDesign(Network network) => new NetworkCompiler(network, isDesign: true).Compile();

    private CompiledNetwork Compile()
    {
        var drops = GatherDrops();
        TouchAndDecideBases(drops);
        PlaceOrigin();
        NumberUnknowns();
        AddReadings();
        AddPriors();
        var columns = new int[_rows.Count * CompiledNetwork.Stride];
        Array.Fill(columns, -1);
        var compiled = new CompiledNetwork
        {
            Source = _network,
            Points = _points,
            Tools = _tools,
            Rows = [.. _rows],
            Columns = columns,
            FloorMetres = new double[_rows.Count],
            UnknownCount = _unknowns,
            FirstToolUnknown = _firstTool,
            Origin = _origin,
        };
        for (var i = 0; i < _rows.Count; i++)
        {
            RowModel.Columns(compiled, _rows[i], columns.AsSpan(i * CompiledNetwork.Stride, CompiledNetwork.Stride));
        }

        return compiled;
    }

    private int P(string id) => _pointIndex[id];

    private DropRecord[] GatherDrops()
    {
        var count = new int[_points.Length];
        var sums = new double[_points.Length * 3];
        foreach (var observation in _network.Observations)
        {
            switch (observation)
            {
                case Observation.DropShift o:
                    count[P(o.Point)]++;
                    sums[P(o.Point) * 3] += o.DxMetres;
                    sums[P(o.Point) * 3 + 1] += o.DyMetres;
                    break;
                case Observation.DropDistance o:
                    count[P(o.Point)]++;
                    sums[P(o.Point) * 3 + 2] += o.ValueMetres * o.ValueMetres;
                    break;
            }
        }

        return
        [
            .. _network.Points.Select(
                (p, i) => DropRecord.Of(p.DropSigmaMetres, count[i] + 1, sums[i * 3], sums[i * 3 + 1], sums[i * 3 + 2])
            ),
        ];
    }

    private void TouchAndDecideBases(DropRecord[] drops)
    {
        var asMark = new bool[_points.Length];
        Array.Fill(asMark, _isDesign);
        var asPoint = new bool[_points.Length];
        foreach (var observation in _network.Observations)
        {
            Touch(observation, asMark, asPoint);
        }

        for (var i = 0; i < _points.Length; i++)
        {
            var source = _network.Points[i];
            var isTiedAsPoint = asPoint[i] || source.X is not Coordinate.Free || source.Y is not Coordinate.Free;
            _points[i].Drop = drops[i];
            _points[i].IsMarkOnly = asMark[i] && !isTiedAsPoint;
            _points[i].DropError = asMark[i] && isTiedAsPoint && drops[i].Variance > 0 ? 0 : -1;
        }
    }

    private void Touch(Observation observation, bool[] asMark, bool[] asPoint)
    {
        void Plan(bool[] kind, params ReadOnlySpan<string> ids)
        {
            foreach (var id in ids)
            {
                kind[P(id)] = true;
                _points[P(id)].IsTouched[0] = true;
                _points[P(id)].IsTouched[1] = true;
            }
        }

        switch (observation)
        {
            case Observation.PlanDistance o:
                Plan(asMark, o.From, o.To);
                break;
            case Observation.DirectDistance o:
                Plan(asPoint, o.From, o.To);
                _points[P(o.From)].IsTouched[2] = true;
                _points[P(o.To)].IsTouched[2] = true;
                break;
            case Observation.Height o:
                _points[P(o.Point)].IsTouched[2] = true;
                break;
            case Observation.Rise o:
                _points[P(o.From)].IsTouched[2] = true;
                _points[P(o.To)].IsTouched[2] = true;
                break;
            case Observation.Offset o:
                Plan(asMark, o.Point, o.From, o.To);
                break;
            case Observation.CoordinatePrior o:
                asPoint[P(o.Point)] |= o.Axis is not Axis.Z;
                _points[P(o.Point)].IsTouched[(int)o.Axis] = true;
                break;
            case Observation.MidpointDrop o:
                Plan(asPoint, o.Point);
                Plan(asMark, o.MarkA, o.MarkB);
                break;
            case Observation.OffsetDrop o:
                Plan(asPoint, o.Point);
                Plan(asMark, o.Mark);
                break;
            case Observation.HoleEdgeDrop o:
                Plan(asPoint, o.Point);
                Plan(asMark, o.Mark);
                break;
            case Observation.BarDrop o:
                Plan(asPoint, o.Point);
                Plan(asMark, o.NearEnd, o.FarEnd);
                break;
        }
    }

    // Fixed values decide; sketches only where nothing is fixed.
    private void PlaceOrigin()
    {
        foreach (var axis in Enum.GetValues<Axis>())
        {
            var held = _network.Points.Where((p, i) => _points[i].IsTouched[(int)axis] && p.Of(axis) is not Coordinate.Free);
            var values = held.Select(p => p.Of(axis).Match(_ => 0, f => f.Metres, u => u.Metres)).ToList();
            values.AddRange(
                _network.Observations.OfType<Observation.CoordinatePrior>().Where(o => o.Axis == axis).Select(o => o.ValueMetres)
            );
            if (axis is Axis.Z && values.Count == 0)
            {
                values.AddRange(_network.Observations.OfType<Observation.Height>().Select(o => o.ValueMetres));
            }

            if (values.Count == 0)
            {
                values.AddRange(_network.Points.Select(p => p.SketchMetres(axis)).OfType<double>());
            }

            _origin[(int)axis] = values.Count > 0 ? values.Average() : 0;
        }
    }

    private void NumberUnknowns()
    {
        for (var i = 0; i < _points.Length; i++)
        {
            foreach (var axis in Enum.GetValues<Axis>())
            {
                var a = (int)axis;
                if (_network.Points[i].Of(axis) is Coordinate.Fixed f)
                {
                    _points[i].Fixed[a] = f.Metres - _origin[a];
                }
                else if (_points[i].IsTouched[a])
                {
                    _points[i].Unknown[a] = _unknowns++;
                }
            }

            if (_points[i].DropError == 0)
            {
                _points[i].DropError = _unknowns;
                _unknowns += 2;
            }
        }

        _firstTool = _unknowns;
        var used = _network.Observations.Select(o => o.Tool).OfType<string>().ToHashSet(StringComparer.Ordinal);
        foreach (var tool in _tools.Where(t => _isDesign || used.Contains(t.Source.Id)))
        {
            tool.Zero = tool.Source.ZeroSigmaMetres > 0 ? _unknowns++ : -1;
            tool.Scale = tool.Source.ScaleSigma > 0 ? _unknowns++ : -1;
        }
    }

    private void AddReadings()
    {
        var rows = new RowFactory(_pointIndex, _toolIndex, _origin);
        for (var i = 0; i < _network.Observations.Count; i++)
        {
            rows.Add(_network.Observations[i], i, _rows);
        }
    }

    private void AddPriors()
    {
        for (var i = 0; i < _points.Length; i++)
        {
            foreach (var axis in Enum.GetValues<Axis>())
            {
                if (_points[i].Unknown[(int)axis] >= 0 && _network.Points[i].Of(axis) is Coordinate.Uncertain u)
                {
                    Prior(RowKind.CoordinateX + (int)axis, i, u.Metres - _origin[(int)axis], u.SigmaMetres);
                }
            }

            if (_points[i].DropError >= 0)
            {
                var sigma = Math.Sqrt(_points[i].Drop.Variance);
                Prior(RowKind.DropErrorX, i, _points[i].Drop.MeanErrorX, sigma);
                Prior(RowKind.DropErrorY, i, _points[i].Drop.MeanErrorY, sigma);
            }
        }

        for (var t = 0; t < _tools.Length; t++)
        {
            if (_tools[t].Zero >= 0)
            {
                Prior(RowKind.ToolZero, t, _tools[t].Source.ZeroMetres, _tools[t].Source.ZeroSigmaMetres);
            }

            if (_tools[t].Scale >= 0)
            {
                Prior(RowKind.ToolScale, t, _tools[t].Source.Scale, _tools[t].Source.ScaleSigma);
            }
        }
    }

    private void Prior(RowKind kind, int index, double value, double sigma) =>
        _rows.Add(new Row(kind, index, -1, -1, -1, value, 0, sigma, -1));
}
