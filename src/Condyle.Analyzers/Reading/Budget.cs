using System.Runtime.CompilerServices;

namespace Condyle.Analyzers.Reading;

/// <summary>
/// What a reading has spent and may still spend, and whether it should go on at all. A reading runs on one thread, so what has no machine
/// at hand finds the budget there.
/// </summary>
internal class Budget(CancellationToken cancellation)
{
    /// <summary>How many steps a reading takes before it asks again whether it is cancelled.</summary>
    public const int StepsBetweenQuestions = 1024;

    [ThreadStatic]
    private static Budget? current;

    private int nextQuestion = StepsBetweenQuestions;
    private int stepsBefore;
    private long room;
    private int valueDepth;
    private int lowered;

    /// <summary>The budget of the reading on this thread.</summary>
    public static Budget Current => current ??= new Budget(CancellationToken.None);

    public CancellationToken Cancellation => cancellation;

    /// <summary>The steps of the path that is being read.</summary>
    public int Steps { get; private set; }

    /// <summary>The steps of all paths so far.</summary>
    public int AllSteps => stepsBefore + Steps;

    /// <summary>Does something on this budget.</summary>
    public T Run<T>(Func<T> read)
    {
        var outer = current;
        current = this;
        try
        {
            return read();
        }
        finally
        {
            current = outer;
        }
    }

    /// <summary>Begins another way through the code: it has the full budget of one, as long as all of them together leave it.</summary>
    public void BeginPath()
    {
        stepsBefore += Steps;
        Steps = 0;
        nextQuestion = 0;
        room = 0;
        valueDepth = 0;
        Ask();
    }

    /// <summary>Counts instructions, or what takes as long: items that are handed out, parts that are compared or copied.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Spend(int steps = 1)
    {
        Steps += steps;
        if (Steps >= nextQuestion)
            Pause();
    }

    /// <summary>Counts what is made: characters of a text, items of a collection, fields of an object.</summary>
    public void Make(int parts)
    {
        room += parts;
        if (room > Limits.Room)
            throw new ReadingStopped($"more than {Limits.Room} characters and items are made");
        Spend(1 + (parts / PartsPerStep));
    }

    /// <summary>Goes one level deeper into a value, to look at its parts, and out again when it is disposed.</summary>
    public Level Deeper(int parts = 1)
    {
        Spend(1 + parts);
        if (++valueDepth > Limits.ValueDepth)
        {
            valueDepth--;
            throw new ReadingStopped($"values lie more than {Limits.ValueDepth} deep inside each other");
        }

        return new Level(this);
    }

    /// <summary>Counts code that is lowered. It is kept for later readings, so it must not count for what this one may still do.</summary>
    public void Lower()
    {
        if (++lowered % StepsBetweenQuestions == 0)
            Ask();
    }

    /// <summary>Asks whether the reading is cancelled.</summary>
    public virtual void Ask() => cancellation.ThrowIfCancellationRequested();

    // Copying a block of items or characters is that much faster than executing an instruction for each.
    private const int PartsPerStep = 16;

    private void Pause()
    {
        nextQuestion = Steps + StepsBetweenQuestions;
        Ask();
        if (Steps > Limits.Steps)
            throw new ReadingStopped($"reading takes more than {Limits.Steps} steps");
        if (AllSteps > Limits.StepsOfAllPaths)
            throw new ReadingStopped($"reading all the ways through takes more than {Limits.StepsOfAllPaths} steps");
    }

    internal readonly struct Level(Budget budget) : IDisposable
    {
        public void Dispose() => budget.valueDepth--;
    }
}
