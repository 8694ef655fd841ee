/**
 * Where to mark a raw shaft, on which side of each mark the saw runs, in what order a set is cut, and what a shaft that was cut too
 * far could still become.
 *
 * <pre>
 *   raw tip                                                                   raw butt
 *   |--- offcut ---|k|------------------------- S -------------------------|k|-- offcut --|
 *   |------- T ------|                                                     |------ U -----|
 *                    mark                                                  mark
 * </pre>
 *
 * <p>The kerf {@code k} lies inside the waste, so that a mark is an end of the finished shaft: {@code T + S + U = R}.
 */
package dev.tipwright.core.cut;
