return Newcomers.CommandLine.Run(args, Console.Out, Console.Error);
