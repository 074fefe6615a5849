package io.github.brinewright.page;

import io.github.brinewright.internal.screen.TakeView;
import io.github.brinewright.internal.visit.Asked;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.QuotedHome;
import io.github.brinewright.proposal.CandidateChoice;
import io.github.brinewright.proposal.HomeDocument;
import io.github.brinewright.proposal.Proposals;
import io.github.brinewright.service.ServiceOption;
import io.github.brinewright.sizing.ControlOptions;
import java.time.LocalDate;
import java.util.Optional;

/** The documents that are taken away: the same bytes as the commands write. */
enum Taken {
  /** The proposal. */
  PROPOSAL {
    @Override
    Optional<Reply> of(Job job, QuotedHome home, Asked asked, LocalDate date) {
      return pdf(Proposals.of(job).document(home, date));
    }
  },
  /** The comparison of three sizes on one page. */
  THREE_SIZES {
    @Override
    Optional<Reply> of(Job job, QuotedHome home, Asked asked, LocalDate date) {
      return pdf(Proposals.of(job).onePage().document(home, date));
    }
  },
  /** The installer's settings sheet of the unit that is asked for. */
  SETTINGS {
    @Override
    Optional<Reply> of(Job job, QuotedHome home, Asked asked, LocalDate date) {
      String unit = asked.value("unit");
      Proposals proposals = Proposals.of(job);
      return TakeView.present(unit)
          .map(kind -> ofPresent(proposals, home, kind, date))
          .orElseGet(() -> proposals.settings(home, CandidateChoice.ofSoftener(unit), date))
          .map(pdf -> Reply.pdf(pdf, "settings-" + home.site().id() + ".pdf"));
    }
  },
  /** The report on the softener that is there. */
  SERVICE {
    @Override
    Optional<Reply> of(Job job, QuotedHome home, Asked asked, LocalDate date) {
      return home.site().present().isEmpty()
          ? Optional.empty()
          : pdf(Proposals.of(job).serviceReport(home, date));
    }
  };

  private static Optional<byte[]> ofPresent(
      Proposals proposals, QuotedHome home, ServiceOption.Kind kind, LocalDate date) {
    return home.site().present().isEmpty()
        ? Optional.empty()
        : proposals.presentSettings(home, kind, date, ControlOptions.on(date));
  }

  /** The document; empty where the home has none such. */
  abstract Optional<Reply> of(Job job, QuotedHome home, Asked asked, LocalDate date);

  private static Optional<Reply> pdf(HomeDocument document) {
    return Optional.of(Reply.pdf(document.pdf(), document.fileName()));
  }
}
