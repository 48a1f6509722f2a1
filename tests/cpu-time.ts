/** Processor time [ms] that this process has taken so far: other work on the machine does not count. */
export function cpuTime(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}
