const { default: TestRunner } = require("jest-runner");

/**
 * Ends a run with the first test file that fails: a fault that was noticed once is noticed. Jest's own
 * setting for that ends the process, so it cannot be used from within one.
 */
module.exports = class StopsEarly extends TestRunner {
  runTests(tests, watcher, options) {
    const stop = this.on("test-file-success", ([, { numFailingTests }]) => {
      if (numFailingTests > 0) watcher.setState({ interrupted: true });
    });
    return super.runTests(tests, watcher, options).finally(stop);
  }
};
