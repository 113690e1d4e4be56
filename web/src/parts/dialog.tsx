import type { ReactNode } from "react";
import { Dialog as AriaDialog, Heading, Modal, ModalOverlay } from "react-aria-components";
import { Button } from "./button.tsx";
import { classes } from "./classes.ts";
import { t } from "./words.ts";

export interface DialogProps {
  readonly title: string;
  readonly isOpen: boolean;
  readonly onClose: () => void;
  readonly wide?: boolean;
  readonly children: ReactNode;
}

/** A dialog over the page; Escape and the closing button leave it, a touch beside it does not: it may hold what was typed. */
export function Dialog({ title, isOpen, onClose, wide = false, children }: DialogProps) {
  return (
    <ModalOverlay
      className="veil"
      isOpen={isOpen}
      onOpenChange={(open) => {
        if (!open) onClose();
      }}
    >
      <Modal className={classes("dialog", wide && "dialog-wide")}>
        <AriaDialog className="dialog-body">
          <div className="row spread">
            <Heading slot="title" level={2}>
              {title}
            </Heading>
            <Button look="quiet" onPress={onClose}>
              {t("parts.close")}
            </Button>
          </div>
          {children}
        </AriaDialog>
      </Modal>
    </ModalOverlay>
  );
}
