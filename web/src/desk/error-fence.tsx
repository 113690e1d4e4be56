import { Component, type ReactNode } from "react";
import { Problem } from "../parts/index.ts";
import { t } from "../parts/words.ts";

interface Props {
  readonly children: ReactNode;
}

/** A page that breaks says so and leaves the rest standing; what was typed is kept in its draft. */
export class ErrorFence extends Component<Props, { readonly broken: Error | null }> {
  override state: { readonly broken: Error | null } = { broken: null };

  static getDerivedStateFromError(broken: Error) {
    return { broken };
  }

  override render() {
    const { broken } = this.state;
    if (broken === null) return this.props.children;
    return (
      <main className="page">
        <Problem title={t("desk.pageBroke")} onAgain={() => this.setState({ broken: null })}>
          {broken.message}
        </Problem>
      </main>
    );
  }
}
