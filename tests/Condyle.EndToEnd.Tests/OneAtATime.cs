// Every test here starts compilers of its own: more at once are no faster.
[assembly: CollectionBehavior(DisableTestParallelization = true)]
