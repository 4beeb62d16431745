using CoatPlan.App;

return Edge.Run(args, Surroundings.OfThisMachine());
