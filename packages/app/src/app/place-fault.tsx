import { Component, type ReactNode } from 'react';
import { Button, Heading, Problem, Sheet } from '../ui/index.ts';
import { useWord } from './words/use-word.ts';

type Props = { readonly address: string; readonly children: ReactNode };
type State = { readonly fault: string | undefined; readonly address: string };

/** A place that failed to load or to be shown takes no other with it, and nothing entered. */
export class PlaceFault extends Component<Props, State> {
  override state: State = { fault: undefined, address: this.props.address };

  static getDerivedStateFromError(error: unknown): Partial<State> {
    return { fault: error instanceof Error ? error.message : String(error) };
  }

  /** Another place gets another chance. */
  static getDerivedStateFromProps({ address }: Props, state: State): Partial<State> | null {
    return state.address === address ? null : { address, fault: undefined };
  }

  override render(): ReactNode {
    const { fault } = this.state;
    return fault === undefined ? this.props.children : <Faulty fault={fault} />;
  }
}

const Faulty = ({ fault }: { readonly fault: string }) => {
  const word = useWord();
  return (
    <Sheet back={{ to: '/', name: word('app.record.back') }}>
      <Heading>{word('app.fault.title')}</Heading>
      <Problem
        what={word('app.fault.what')}
        why={`${word('app.fault.why')} ${fault}`}
        mend={
          <Button kind="main" onPress={() => location.reload()}>
            {word('app.fault.again')}
          </Button>
        }
      />
    </Sheet>
  );
};
