namespace Condyle.Analyzers.Reading;

/// <summary>Exceptions that stand for several, as a task throws them for what failed in it.</summary>
internal static class SeveralExceptions
{
    /// <summary>The one at the bottom of it all; none where that isn't known.</summary>
    public static object? BaseOf(object? value)
    {
        while (ExceptionValue.Of(value) is { } known)
        {
            var isSeveral = known.Type == ExceptionValue.Several;
            if (isSeveral && known.All is not { Count: 1 })
                return known.All is null ? null : value;
            if (known.Inner is null)
                return value;
            value = known.Inner;
            // One that stands for several goes no further down than those do.
            if (isSeveral && ExceptionValue.Of(value) is { } inner && inner.Type != ExceptionValue.Several)
                return value;
        }

        return null;
    }

    /// <summary>The same with all that stand for several taken apart, those on top first; none where they aren't known.</summary>
    public static ExceptionValue? Flattened(object? value)
    {
        var flat = new List<object?>();
        var pending = new Queue<object?>([value]);
        while (pending.Count > 0)
        {
            if (ExceptionValue.Of(pending.Dequeue())?.All is not { } all)
                return null;
            foreach (var one in all)
            {
                if (ExceptionValue.Of(one) is not { } known)
                    return null;
                if (known.Type == ExceptionValue.Several)
                    pending.Enqueue(one);
                else
                    flat.Add(one);
            }
        }

        return ExceptionValue.ForAll(flat);
    }

    /// <summary>Throws those again that a function doesn't deal with.</summary>
    public static object? Handle(Invocation call)
    {
        var handles = call.Function(1);
        if (ExceptionValue.Of(call[0])?.All is not { } all)
            throw call.Unknown();
        var left = all.Where(one => !call.Truth(handles.Invoke(call.Machine, one))).ToList();
        return left.Count == 0 ? null : throw new ThrownByCode(ExceptionValue.Several, "Some exceptions weren't dealt with.", ExceptionValue.ForAll(left));
    }
}
