% The same problems as a person would write them in Octave: Gauss-Newton with the backslash, then inv.
arguments = argv (); folder = arguments{1}; repeats = str2double (arguments{2});
times = fopen (fullfile (folder, 'times.octave.txt'), 'w');

function answer = solve_network (points, readings, is_sparse, slips)
  free = [points(:,1) == 0, points(:,1) == 0, true(rows (points), 1)];
  number = zeros (size (free))'; number(free') = 1:nnz (free); number = number';
  p = points(:,2:4);
  d = find (readings(:,1) == 0); h = find (readings(:,1) == 1);
  a = readings(:,2) + 1; b = readings(:,3) + 1; s = readings(:,5);
  for step = 1:50
    u = p(b(d),:) - p(a(d),:); n = sqrt (sum (u .^ 2, 2));
    r = zeros (rows (readings), 1);
    r(d) = n - readings(d,4); r(h) = p(a(h),3) - readings(h,4); r ./= s;
    e = u ./ n ./ s(d);
    i = [repmat(d, 3, 1); repmat(d, 3, 1); h];
    j = [number(a(d),:)(:); number(b(d),:)(:); number(a(h),3)];
    v = [-e(:); e(:); 1 ./ s(h)];
    known = j > 0;
    J = sparse (i(known), j(known), v(known), rows (readings), nnz (free));
    if (! is_sparse) J = full (J); end
    if (is_sparse) x = -((J' * J) \ (J' * r)); else x = -(J \ r); end
    q = p'; q(free') += x; p = q';
    if (norm (x, Inf) < 1e-12) break; end
  end
  Q = inv (full (J' * J));
  q = p';
  red = full (1 - sum ((J * Q) .* J, 2));
  answer = [q(free'); sqrt(diag (Q)); red];
  if (is_sparse) return; end
  i = slips(:,1) + 1; plan = find (slips(:,2) == 2); ip = i(plan); sigma = readings(i,5);
  m = r; u = p(b(d),:) - p(a(d),:); m(d) = (sqrt (sum (u .^ 2, 2)) - readings(d,4)) ./ s(d); m(h) = (p(a(h),3) - readings(h,4)) ./ s(h);
  total = m' * m; f = numel (m) - nnz (free);
  rest = total - m(i) .^ 2 ./ red(i); dif = -m(i) .* sigma ./ red(i); var = sigma .^ 2 ./ red(i);
  evidence = @(dd, vv) 0.5 * log (var ./ vv) + 0.5 * (8 + f) * log ((8 + total) ./ (8 + rest + dd .^ 2 ./ vv));
  u = p(b(ip),1:2) - p(a(ip),1:2); n = sqrt (sum (u .^ 2, 2));
  H = zeros (numel (ip), nnz (free));
  for axis = 1:2
    for e = 1:2
      c = number(ifelse_end (e, a, b)(ip),axis); w = (2 * e - 3) * u(:,axis) ./ n; k = find (c > 0);
      H(sub2ind (size (H), k, c(k))) = w(k);
    end
  end
  along = sum ((H * Q) .* J(ip,:), 2);
  meant = dif - (readings(i,4) - slips(:,3)); meantvar = var;
  meant(plan) = readings(ip,4) - n - along .* m(ip) ./ red(ip);
  meantvar(plan) = sum ((H * Q) .* H, 2) + readings(ip,5) .^ 2 + along .^ 2 ./ red(ip);
  amount = 0;
  for size_ = [0.005, 0.02, 0.08, 0.3] amount += exp (evidence (dif, var + size_ ^ 2)) / 4; end
  odds = evidence (meant, meantvar); is_free = slips(:,2) == 0; odds(is_free) = log (amount(is_free));
  answer = [answer; slips(:,4) + odds];
end

function x = ifelse_end (e, a, b)
  if (e == 1) x = a; else x = b; end
end

function zone = solve_plane (p)
  q = p - mean (p);
  for step = 1:20
    o = ones (rows (q), 1);
    A = [q(:,1:2), o, -o; -q(:,1:2), -o, -o]; f = [q(:,3); -q(:,3)];
    param.msglev = 0; param.tolbnd = 1e-12; param.toldj = 1e-12;
    x = glpk ([0; 0; 0; 1], A, f, [-Inf; -Inf; -Inf; 0], [], repmat ('U', 1, rows (A)), 'CCCC', 1, param);
    n = [-x(1), -x(2), 1]; n /= norm (n);
    if (hypot (n(1), n(2)) < 1e-12) break; end
    u = cross ([0, 1, 0], n); u /= norm (u);
    q = q * [u', cross(n, u)', n'];
  end
  zone = 2 * x(4);
end

cases = {'bay', false, repeats; 'frame', false, repeats; 'hall', true, 1; 'plate', false, repeats};
for k = 1:rows (cases)
  [name, is_sparse, count] = cases{k,:};
  points = load (fullfile (folder, [name '.points.txt']));
  if (! strcmp (name, 'plate')) readings = load (fullfile (folder, [name '.readings.txt'])); end
  slips = []; if (! is_sparse && ! strcmp (name, 'plate')) slips = load (fullfile (folder, [name '.slips.txt'])); end
  fprintf (times, '%s', name);
  for t = 0:count
    tic;
    if (strcmp (name, 'plate')) answer = solve_plane (points); else answer = solve_network (points, readings, is_sparse, slips); end
    if (t > 0) fprintf (times, ' %.6f', toc * 1000); end
  end
  fprintf (times, '\n');
  f = fopen (fullfile (folder, [name '.octave.txt']), 'w'); fprintf (f, '%.17g\n', answer); fclose (f);
end
fclose (times);
