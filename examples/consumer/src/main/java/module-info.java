/** A program that names the library in its module descriptor. */
module org.wattwright.consumer {
  requires org.wattwright.core;
}
