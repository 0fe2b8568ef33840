import type { Request } from 'express';

interface Layer {
  route?: { path: string | string[]; methods: Record<string, boolean> };
}

interface Route {
  pattern: RegExp;
  methods: string[];
}

const patternOf = (path: string): RegExp => new RegExp(`^${path.replaceAll(/[.+^${}()|[\]\\]/g, '\\$&').replaceAll(/:\w+/g, '[^/]+')}/?$`);

/** What the framework really serves, read from it after start. */
export class RouteTable {
  private readonly routes: Route[];

  constructor(express: { router: { stack: Layer[] } }) {
    this.routes = express.router.stack.flatMap(({ route }) =>
      route ? [route.path].flat().map((path) => ({ pattern: patternOf(path), methods: Object.keys(route.methods).map((name) => name.toUpperCase()) })) : [],
    );
  }

  /** Methods that an address takes; empty when there is no such address. */
  allowed(request: Request): string[] {
    const methods = new Set(this.routes.filter(({ pattern }) => pattern.test(request.path)).flatMap((route) => route.methods));
    if (methods.has('GET')) methods.add('HEAD');
    return [...methods].filter((method) => !method.startsWith('_')).sort();
  }
}
