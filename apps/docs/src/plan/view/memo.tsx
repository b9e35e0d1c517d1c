import { Component, type ComponentChildren } from 'preact';

type Props<P> = P & { readonly of: (props: P) => ComponentChildren };

/** Shows a part again only where something that it is given is another thing than before. */
export class Memo<P extends object> extends Component<Props<P>> {
  override shouldComponentUpdate(next: Readonly<Props<P>>): boolean {
    const before = this.props;
    return (Object.keys(next) as (keyof Props<P>)[]).some((key) => next[key] !== before[key]);
  }

  override render() {
    return this.props.of(this.props);
  }
}
